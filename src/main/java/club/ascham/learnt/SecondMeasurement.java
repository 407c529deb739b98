package club.ascham.learnt;

import club.ascham.verdict.Reading;
import java.time.Instant;

/** What a bow measured after an adjustment, while its check is being judged. */
public record SecondMeasurement(long adjustment, Instant at, Reading reading) {}
