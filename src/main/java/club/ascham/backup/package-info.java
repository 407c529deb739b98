/**
 * Copies of the club's file that are known to be sound: made while people work, kept by a rota, and
 * brought back by one command. Others may make one ({@link club.ascham.backup.Backups}) and take a
 * copy of one moment along ({@link club.ascham.backup.Snapshot}).
 */
package club.ascham.backup;
