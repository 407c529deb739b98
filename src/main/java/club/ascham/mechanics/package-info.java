/**
 * The mechanics of the strung bow: statics of its limbs, the twisted string, and what one bow has
 * shown of itself. Plain functions on numbers; inches, pounds-force and radians inside, as the
 * names say.
 */
package club.ascham.mechanics;
