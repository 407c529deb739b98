package club.ascham.bow;

/** How a bow is put together, which decides what can be adjusted and what can be exchanged. */
public enum Build {
  /** Limbs slot in; limb bolts set the tiller; parts of one fitting standard interchange. */
  ADJUSTABLE,
  /** Limbs are bolted to one model of riser; the tiller is fixed. */
  SCREW_IN,
  /** One item stands for riser and limbs. */
  ONE_PIECE
}
