package club.ascham.loan;

import club.ascham.bow.Candidate;
import club.ascham.bow.Suitability;
import club.ascham.rig.RigCard;
import club.ascham.rig.RigSpecs;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;

/**
 * Where advice speaks against a bow for whoever has it, by what is known now of both: a reason for
 * giving it all the same says nothing to who reads it later and was not told what it answers.
 */
@ApplicationScoped
public class LentAdvice {
  private final RigSpecs specs;

  LentAdvice(RigSpecs specs) {
    this.specs = specs;
  }

  /** Of what is out; nothing of a session, where each archer is told by the bow. */
  public List<String> of(LoanSheet sheet, List<LoanLine> lines) {
    return Archer.of(sheet).stream()
        .flatMap(
            archer ->
                against(
                    archer,
                    specs
                        .of(
                            lines.stream()
                                .filter(LoanLine::isOut)
                                .map(LoanLine::rig)
                                .filter(Objects::nonNull)
                                .distinct()
                                .toList())
                        .values()))
        .toList();
  }

  static Stream<String> against(Archer archer, Collection<RigCard> bows) {
    List<Candidate<RigCard>> candidates =
        bows.stream()
            .flatMap(card -> card.spec().map(s -> new Candidate<>(card, s, card.setUp())).stream())
            .toList();
    return Suitability.rank(archer.answers(), candidates).unsuited().stream()
        .flatMap(one -> one.why().stream())
        .distinct();
  }
}
