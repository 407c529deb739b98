package club.ascham.rig;

import club.ascham.bow.Level;
import club.ascham.bow.Style;
import club.ascham.id.RigId;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.Instant;

/** A riser with limbs and a string, or a one-piece bow with its string, as one bow. */
@Entity
public class Rig {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  @Enumerated(EnumType.STRING)
  private Style style;

  @Enumerated(EnumType.STRING)
  private Level level;

  private Instant assembledAt;
  private Instant dissolvedAt;

  @Version private int version;

  protected Rig() {}

  public Rig(Style style, Level level, Instant assembledAt) {
    this.style = style;
    this.level = level;
    this.assembledAt = assembledAt;
  }

  public RigId id() {
    return new RigId(id);
  }

  public int version() {
    return version;
  }

  Level level() {
    return level;
  }

  public boolean isTakenApart() {
    return dissolvedAt != null;
  }

  public void shootAs(Style newStyle, Level newLevel) {
    style = newStyle;
    level = newLevel;
  }

  public void dissolve(Instant at) {
    if (isTakenApart()) {
      throw new IllegalStateException("rig " + id + " was taken apart already");
    }
    dissolvedAt = at.isBefore(assembledAt) ? assembledAt : at;
  }
}
