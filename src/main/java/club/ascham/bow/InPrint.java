package club.ascham.bow;

/**
 * What is in print about bows, as it is shown beside what rests on it: title, institution, year. A
 * maker is not named where a hand is at work, nor is a private page.
 */
public final class InPrint {
  public static final String COMMON = "common practice, no published source";

  public static final String CLUB_LIST =
      "“Maintenance and safety – equipment”, Leith Community Archers, undated";
  public static final String CENTRE_SHEET =
      "“Care, Inspection and Storage of Archery Equipment”, Lihou Charitable Trust, undated";
  public static final String INSPECTION_GUIDE =
      "“Archery: Equipment inspection guidelines”, Society for Creative Anachronism New Zealand,"
          + " undated";
  public static final String SCHOOLS = "“Equipment Safety”, Olympic Archery in Schools, undated";
  public static final String CLUB_CARE =
      "“Caring for your equipment”, 50th State Archery Club, undated";
  public static final String STRING_CHANGE =
      "“Quand changer sa corde ?”, Archers Guéretois, undated";
  public static final String FRENCH_CHECKS =
      "“Vérifications et préréglages de son arc classique”, Archers de Rixheim, after the French"
          + " federation (FFTA), undated";
  public static final String ARROW_CHECKS = "“Safety”, Archery Australia, undated";

  /** On screws that shake out, and on screws at the limbs that work loose. */
  public static final String COACH_ON_SCREWS = "a coach's page, 2016";

  public static final String SEASON_START =
      "“Outdoor season preparation”, an arrow maker's page, 2014";

  public static final String MAKER_ON_TURNS = "a bow maker's answers on draw weight, undated";
  public static final String MAKER_WARNINGS = "a recurve maker's warnings, undated";
  public static final String MAKER_MANUAL = "a recurve maker's manual, p. 11";
  public static final String ARROW_MAKER_GUIDE =
      "an arrow maker's Arrow Tuning and Maintenance Guide, p. 3";

  /** The care tolerance of a brace height and the alarm of a tiller; both for wooden bows. */
  public static final String BOWYER = "one bowyer's limit, given for wooden bows";

  public static final String TILLER_ARTICLE =
      "“Tiller and bracing height: going deep”, Bow International, undated";
  public static final String TILLER_CLUB =
      "“Choosing the best tiller for a recurve bow”, Hull Archery Club, undated";

  public static final String BEGINNERS_ARROWS = "“Health and safety rules”, Ely Archers, undated";

  /** Five grains to the pound: the rule of a competition body, and what makers warn of. */
  public static final String ARROW_MASS =
      "“IBO Rules and Class Definitions”, International Bowhunting Organization, 2019, III A;"
          + " recurve makers warn of less";

  /** How many twists a string may hold, as a club starts: the lowest and the highest figure. */
  public static final String TWISTS =
      "10 to 30 turns: “Réglage du band”, La Flèche Gasconne, undated; 20 to 60: “La corde”,"
          + " Archers de Douai, from a coaches' academy, undated";

  /** Maxima by age: the heads of its columns say so. */
  public static final String COURSE =
      "“Bow weights for beginners and juniors”, a coach's page, undated, which quotes the UK"
          + " Scouts";

  /** That a bow which lost 2 or 3 lb at one draw asks for a decision about its limbs. */
  public static final String WEIGHT_LOST = FRENCH_CHECKS;

  private InPrint() {}
}
