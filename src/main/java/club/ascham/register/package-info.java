/**
 * The club's items: what each is, its code, how it is registered, changed, retired and found. Other
 * features name an item by its id and ask {@link club.ascham.register.PartSpecs} what it is; the
 * entities stay here.
 */
package club.ascham.register;
