/**
 * The mechanics of the strung bow: statics of its limbs, the twisted string, and what one bow has
 * shown of itself. Plain functions on numbers; inches, pounds-force and radians inside, as the
 * names say.
 *
 * <p>A limb's profile and a root make an {@link club.ascham.mechanics.ElasticLimb}; {@link
 * club.ascham.mechanics.Bend} integrates it for one line and tension, {@link
 * club.ascham.mechanics.ElasticBow} seeks brace, tension and lean of a string, and {@link
 * club.ascham.mechanics.LimbDraw} walks from brace to full draw. {@link
 * club.ascham.mechanics.CommonRecurve} is the one assumed geometry, {@link
 * club.ascham.mechanics.DrawCurve} its force against draw, kept for the kinds of bow that were
 * asked for lately.
 *
 * <p>There is no tiller from a model: a rigid limb fitted to a draw curve gets even its sign wrong.
 * Tiller is learnt, bow by bow.
 */
package club.ascham.mechanics;
