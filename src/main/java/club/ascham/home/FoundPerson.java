package club.ascham.home;

import club.ascham.id.LoanId;
import java.time.LocalDate;

/**
 * A borrower, or the leader of a session that is out, whose name the code box found; once for each
 * loan that is open.
 *
 * @param borrower null: a session's leader
 * @param loan null: has nothing of the club's (likewise the day it is due)
 */
public record FoundPerson(Long borrower, String name, LoanId loan, LocalDate dueOn) {}
