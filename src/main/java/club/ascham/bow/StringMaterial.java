package club.ascham.bow;

/** What a string's strands are made of. */
public enum StringMaterial {
  POLYESTER,
  HMPE,
  LCP,
  OTHER
}
