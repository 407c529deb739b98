/**
 * Who works here and what each may do: accounts, sign-in, the inspector's permit. Others ask {@link
 * club.ascham.people.Actor} who is acting.
 */
package club.ascham.people;
