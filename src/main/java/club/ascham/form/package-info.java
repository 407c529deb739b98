/**
 * What a person typed, by field, what is wrong with it, and what a press of it led to. The page,
 * the API and the CSV import hand their texts to the same parsers through here. Knows no web and no
 * database.
 */
package club.ascham.form;
