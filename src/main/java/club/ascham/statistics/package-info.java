/**
 * Statistics of upkeep: how far readers scatter, whether a bow is really changing, how long parts
 * last, and when to replace them. Plain functions on numbers; every length is in millimetres, every
 * age in whatever the caller counts (days, loans, shots). What draws at random is handed its seed.
 */
package club.ascham.statistics;
