package club.ascham.people;

import club.ascham.id.AccountId;
import club.ascham.units.LengthUnit;
import jakarta.persistence.Entity;
import jakarta.persistence.EnumType;
import jakarta.persistence.Enumerated;
import jakarta.persistence.GeneratedValue;
import jakarta.persistence.GenerationType;
import jakarta.persistence.Id;
import jakarta.persistence.Version;
import java.time.LocalDate;

/** Someone who signs in. */
@Entity
public class Account {
  @Id
  @GeneratedValue(strategy = GenerationType.IDENTITY)
  private Long id;

  private String name;
  private String passwordHash;

  @Enumerated(EnumType.STRING)
  private Role role;

  private LocalDate permitUntil;

  @Enumerated(EnumType.STRING)
  private LengthUnit lengthUnit = LengthUnit.INCH;

  private String accessKeyHash;
  private LocalDate closedOn;
  private LocalDate erasedOn;

  @Version private int version;

  protected Account() {}

  public Account(String name, String passwordHash, Role role, LocalDate permitUntil) {
    this.name = name;
    this.passwordHash = passwordHash;
    this.role = role;
    this.permitUntil = permitUntil;
  }

  public AccountId id() {
    return new AccountId(id);
  }

  String name() {
    return name;
  }

  void measureIn(LengthUnit unit) {
    this.lengthUnit = unit;
  }

  Role role() {
    return role;
  }

  boolean isOpen() {
    return closedOn == null;
  }

  /** What it is for, and until when its holder may turn limb bolts; null: no permit. */
  void serveAs(Role newRole, LocalDate newPermitUntil) {
    this.role = newRole;
    this.permitUntil = newPermitUntil;
  }

  /**
   * Nobody signs in with it any more, nor once it is open again until a password is chosen anew;
   * what it did stays under its name.
   */
  void close(LocalDate on) {
    closedOn = on;
    accessKeyHash = null;
    passwordHash = "";
  }

  void reopen() {
    closedOn = null;
  }

  boolean isErased() {
    return erasedOn != null;
  }

  /** From now on only a number. */
  void erase(LocalDate on) {
    name = "Closed account " + id;
    permitUntil = null;
    lengthUnit = LengthUnit.INCH;
    erasedOn = on;
  }

  int version() {
    return version;
  }

  void changePassword(String newHash) {
    this.passwordHash = newHash;
  }

  /** Null: no key opens it. */
  void useAccessKey(String newKeyHash) {
    this.accessKeyHash = newKeyHash;
  }
}
