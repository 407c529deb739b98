package club.ascham.borrower;

import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** The borrowers themselves, for the use cases that change them. */
@ApplicationScoped
public class BorrowerRecords implements PanacheRepository<Borrower> {
  public Optional<Borrower> with(BorrowerId id) {
    return findByIdOptional(id.value());
  }

  /** The one with the very same name and contact, so that nobody is kept twice. */
  public Optional<Borrower> samePerson(BorrowerDetails details) {
    return find("lower(name) = ?1", NamePart.of(details.name())).stream()
        .filter(known -> known.details().samePersonAs(details))
        .findFirst();
  }
}
