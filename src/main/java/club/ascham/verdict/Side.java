package club.ascham.verdict;

/** Which of a bow's two limbs. */
enum Side {
  UPPER,
  LOWER
}
