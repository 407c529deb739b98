package club.ascham.check;

import club.ascham.id.CheckId;
import club.ascham.rig.RigSpecs;
import jakarta.enterprise.context.ApplicationScoped;

/**
 * Looks, once a check is saved, whether its bow is changing. The look stands outside the save: it
 * reads much and seldom asks for anything, and others wait at the gate meanwhile. Were it cut off,
 * the next check would ask. A bow that is to be adjusted or withdrawn is being worked on already.
 *
 * <p>An adjustment begins a bow's readings anew.
 */
@ApplicationScoped
class AfterCheck {
  private final Checks checks;
  private final RigSpecs specs;
  private final NoteDrift noteDrift;

  AfterCheck(Checks checks, RigSpecs specs, NoteDrift noteDrift) {
    this.checks = checks;
    this.specs = specs;
    this.noteDrift = noteDrift;
  }

  void look(CheckId check) {
    checks
        .one(check.value())
        .filter(saved -> saved.isFit() && saved.reading().isPresent())
        .flatMap(saved -> specs.of(saved.rig()))
        .ifPresent(noteDrift::of);
  }
}
