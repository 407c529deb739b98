/**
 * Withdrawals: taking a part out of use, and its release by someone competent. Others withdraw
 * through {@link club.ascham.withdrawal.WithdrawItem} and read {@link
 * club.ascham.withdrawal.Withdrawals}.
 */
package club.ascham.withdrawal;
