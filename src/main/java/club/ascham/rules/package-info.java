/** How this club does it: its name, its table of bands, its terms of lending. */
package club.ascham.rules;
