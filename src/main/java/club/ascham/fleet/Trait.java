package club.ascham.fleet;

import club.ascham.bow.Hand;
import club.ascham.form.Words;
import club.ascham.standing.State;
import java.util.Arrays;

/** What rigs are counted by. Every rig has exactly one word of each, so the counts add up. */
enum Trait {
  STATE {
    @Override
    String of(FleetRig rig) {
      return rig.state().word();
    }

    @Override
    String said(String word) {
      return constant(State.values(), word);
    }
  },
  HAND {
    @Override
    String of(FleetRig rig) {
      if (rig.hand() != null) {
        return Words.of(rig.hand());
      }
      return rig.hasBody() ? EITHER : UNKNOWN;
    }

    @Override
    String said(String word) {
      return switch (word) {
        case EITHER -> "either hand";
        case UNKNOWN -> "hand not known";
        default -> constant(Hand.values(), word);
      };
    }
  },
  LENGTH {
    @Override
    String of(FleetRig rig) {
      return rig.bowLengthIn() == null ? UNKNOWN : String.valueOf(rig.bowLengthIn());
    }

    @Override
    String said(String word) {
      return word.equals(UNKNOWN) ? "length not known" : word + " in";
    }
  },
  WEIGHT {
    @Override
    String of(FleetRig rig) {
      return rig.markedLb() == null ? UNKNOWN : WeightBand.of(rig.markedLb()).word();
    }

    @Override
    String said(String word) {
      return Arrays.stream(WeightBand.values())
          .filter(band -> band.word().equals(word))
          .map(WeightBand::said)
          .findFirst()
          .orElse("weight not known");
    }
  },
  /** Whether it can be counted on for the course next week. */
  COURSE {
    @Override
    String of(FleetRig rig) {
      return Words.of(rig.fielding().chance());
    }

    @Override
    String said(String word) {
      return "course: " + constant(Fielding.Chance.values(), word);
    }
  },
  /** Why it can, or what hinders it. */
  BECAUSE {
    @Override
    String of(FleetRig rig) {
      return Words.of(rig.fielding());
    }

    @Override
    String said(String word) {
      return Arrays.stream(Fielding.values())
          .filter(fielding -> Words.of(fielding).equals(word))
          .map(Fielding::said)
          .findFirst()
          .orElse(word);
    }
  };

  static final String UNKNOWN = "not-known";
  static final String EITHER = "either";

  /** The rig's word for this trait, as it stands in addresses and JSON. */
  abstract String of(FleetRig rig);

  /** The word as people say it. */
  abstract String said(String word);

  String saidOf(FleetRig rig) {
    return said(of(rig));
  }

  /** Its name in addresses. */
  String key() {
    return Words.of(this);
  }

  private static String constant(Enum<?>[] constants, String word) {
    return Arrays.stream(constants)
        .filter(constant -> Words.of(constant).equals(word))
        .map(Words::said)
        .findFirst()
        .orElse(word);
  }
}
