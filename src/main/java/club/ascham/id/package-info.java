/** The typed names by which one feature refers to another's things. */
package club.ascham.id;
