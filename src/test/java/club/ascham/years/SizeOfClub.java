package club.ascham.years;

/** How large a club is, and how long it has been keeping its record. */
enum SizeOfClub {
  X1(40, 2),
  X5(120, 10),
  X25(1_000, 10);

  final int rigs;
  final int years;

  SizeOfClub(int rigs, int years) {
    this.rigs = rigs;
    this.years = years;
  }
}
