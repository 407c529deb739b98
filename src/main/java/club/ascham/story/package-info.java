/**
 * What happened to each thing, in plain sentences, appended and never changed.
 *
 * <p>One record, and not a story beside an audit: a sentence (who, happened, recorded, what, why),
 * and under it each field that was changed, from and to. Triggers write those, so that nothing
 * passes them by, another program's edit included: it shows as untold, and is told as such at the
 * next save.
 *
 * <p>At the end of a use case each sentence is sealed: SHA-256 over the seal before and the entry
 * as JSON. The export gives that JSON as it is, so that {@code sha256sum} can follow the chain.
 * <em>Verify</em> reckons every seal again and compares each row with what was last recorded of it;
 * that the tail was cut off shows by a seal kept elsewhere, on a printed fleet page or in a
 * backup's name.
 *
 * <p>Personal values stand beside the chain with a salt, and the chain holds their hash: erasing
 * takes value and salt away, and the chain stays whole. Borrowers become numbers on request, or
 * when the club's time for names is over; closed accounts on request. What is erased leaves the
 * file, too.
 */
package club.ascham.story;
