/**
 * Clubs with years behind them, made by the use cases' own doors with the clock handed in, and what
 * the program takes when it serves them. Off by default: {@code mvn test -Pmeasure
 * -Dtest=ClubsOfYearsTest} makes the clubs.
 */
package club.ascham.years;
