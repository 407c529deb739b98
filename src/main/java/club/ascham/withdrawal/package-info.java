/**
 * Withdrawals: taking a part out of use, and its release by someone competent. Others withdraw
 * through {@link club.ascham.withdrawal.WithdrawItem} and read {@link
 * club.ascham.withdrawal.Withdrawals}.
 *
 * <p>A withdrawal is of a part, and a rig is withdrawn when a part fitted to it is: so a doubtful
 * limb can't come back on another riser.
 *
 * <p>It ends by one way. It is decided what the part needs ({@link
 * club.ascham.withdrawal.Decision}), that is passed, and someone with the permit says what was
 * looked at, by whom, and why it may be used again. {@link club.ascham.withdrawal.Hindrance} says
 * what is missing and where it is done; a trigger refuses the rest. Whatever failed last waits for
 * a pass of the same work.
 */
package club.ascham.withdrawal;
