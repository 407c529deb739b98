package club.ascham.mechanics;

/**
 * A symmetric bow whose limbs are rigid levers on torsion springs (Hickman's type), strung with an
 * inextensible string. Closed forms, own derivation: half of the bow lies above the draw axis, the
 * limb is hinged at (hingeForwardIn, hingeHeightIn) and leans by an angle from the riser line
 * toward the archer.
 *
 * @param limbIn lever a; for a limb that bends as an arc, three quarters of its bending length
 * @param hingeHeightIn h, from the draw axis
 * @param hingeForwardIn d0, of the hinge toward the string from the point that brace is measured at
 * @param stiffnessInLbPerRad K of one limb
 * @param restAngleRad of the unstrung limb; negative: away from the archer
 * @param halfStringIn s, from nock to limb tip
 */
public record RigidLimb(
    double limbIn,
    double hingeHeightIn,
    double hingeForwardIn,
    double stiffnessInLbPerRad,
    double restAngleRad,
    double halfStringIn) {

  /**
   * @throws OutOfDomain where no such bow can be strung
   */
  public RigidLimb {
    Domain.positive("limbIn", limbIn);
    Domain.positive("hingeHeightIn", hingeHeightIn);
    Domain.finite("hingeForwardIn", hingeForwardIn);
    Domain.positive("stiffnessInLbPerRad", stiffnessInLbPerRad);
    Domain.within("restAngleRad", restAngleRad, -Math.PI / 2, Math.PI / 2);
    Domain.positive("halfStringIn", halfStringIn);
    double rise = (halfStringIn - hingeHeightIn) / limbIn;
    if (rise <= -1 || rise >= 1) {
      throw new OutOfDomain(
          "halfStringIn", "Such a string spans no braced bow: it is too long or too short.");
    }
    if (Math.acos(rise) <= restAngleRad) {
      throw new OutOfDomain("restAngleRad", "The limb would be slack when braced.");
    }
  }

  /** Lean of the limb when braced. */
  public double braceAngleRad() {
    return Math.acos((halfStringIn - hingeHeightIn) / limbIn);
  }

  public double braceIn() {
    return hingeForwardIn + limbIn * Math.sin(braceAngleRad());
  }

  /** Brace gained by each inch of string; negative, whatever the stiffness. */
  public double dBraceDString() {
    return -0.5 / Math.tan(braceAngleRad());
  }

  /** Tension of the string when braced. */
  public double tensionLb() {
    double angle = braceAngleRad();
    return stiffnessInLbPerRad * (angle - restAngleRad) / (limbIn * Math.sin(angle));
  }

  /**
   * Force on the fingers.
   *
   * @param drawIn of the nock from the point that brace is measured at
   * @throws OutOfDomain short of brace, or beyond what string and limbs reach
   */
  public double forceLb(double drawIn) {
    double angle = drawnAngleRad(drawIn);
    double across = drawIn - tipForwardIn(angle);
    double up = tipHeightIn(angle);
    // Moment arm of the string about the hinge, from the tip's lever and the string's direction.
    double lever = limbIn * (Math.sin(angle) * up + Math.cos(angle) * across) / halfStringIn;
    if (lever <= 0) {
      throw new OutOfDomain("drawsIn", "The string would pull the limb straight along: too far.");
    }
    double tension = stiffnessInLbPerRad * (angle - restAngleRad) / lever;
    return 2 * tension * across / halfStringIn;
  }

  /** Energy stored between brace and this draw, in both limbs, in inch-pounds. */
  public double energyInLb(double drawIn) {
    double drawn = drawnAngleRad(drawIn) - restAngleRad;
    double braced = braceAngleRad() - restAngleRad;
    return stiffnessInLbPerRad * (drawn * drawn - braced * braced);
  }

  /** hypot(D - d0 - a sin t, h + a cos t) = s, solved for t: a cos(t - delta) is known. */
  private double drawnAngleRad(double drawIn) {
    Domain.finite("drawsIn", drawIn);
    if (drawIn < braceIn() - 1e-9) {
      throw new OutOfDomain("drawsIn", "A draw lies beyond the braced string.");
    }
    double forward = drawIn - hingeForwardIn;
    double reach = Math.hypot(forward, hingeHeightIn);
    double cosine =
        (halfStringIn * halfStringIn - reach * reach - limbIn * limbIn) / (2 * limbIn * reach);
    if (cosine < -1 || cosine > 1) {
      throw new OutOfDomain("drawsIn", "String and limbs don't reach so far.");
    }
    // h cos t - forward sin t = reach cos(t + atan2(forward, h)); the braced branch is the positive
    // one.
    double angle = Math.acos(cosine) - Math.atan2(forward, hingeHeightIn);
    if (angle < braceAngleRad() - 1e-6) {
      throw new OutOfDomain("drawsIn", "String and limbs don't reach so far.");
    }
    return angle;
  }

  private double tipForwardIn(double angle) {
    return hingeForwardIn + limbIn * Math.sin(angle);
  }

  private double tipHeightIn(double angle) {
    return hingeHeightIn + limbIn * Math.cos(angle);
  }
}
