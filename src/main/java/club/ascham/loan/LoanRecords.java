package club.ascham.loan;

import club.ascham.id.LoanId;
import io.quarkus.hibernate.orm.panache.PanacheRepository;
import jakarta.enterprise.context.ApplicationScoped;
import java.util.Optional;

/** The loans themselves, for the use cases that change them. */
@ApplicationScoped
public class LoanRecords implements PanacheRepository<Loan> {
  public Optional<Loan> with(LoanId id) {
    return findByIdOptional(id.value());
  }
}
