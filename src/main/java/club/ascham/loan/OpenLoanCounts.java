package club.ascham.loan;

/** How many loans are open, and how many of them are late or come back today. */
public record OpenLoanCounts(int open, int overdue, int dueToday) {}
