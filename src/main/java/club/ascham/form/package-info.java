/**
 * What a person typed, by field, what is wrong with it, and what a press of it led to. The page,
 * the API and the CSV import hand their texts to the same parsers through here. Knows no web and no
 * database.
 *
 * <p>One place says which characters are taken, for forms, JSON and files alike: none that can't be
 * seen, since two names that look the same would be two people, and an override turns the words
 * after it round.
 */
package club.ascham.form;
