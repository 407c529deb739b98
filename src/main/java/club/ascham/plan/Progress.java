package club.ascham.plan;

/** Whoever waits for a plan. Called from the threads that reckon it. */
public interface Progress {
  /** Nobody waits, and nobody stops it. */
  Progress NOBODY =
      new Progress() {
        @Override
        public void reckoned(int replications) {}

        @Override
        public boolean stopped() {
          return false;
        }
      };

  /** So many replications are done by now. */
  void reckoned(int replications);

  /** Asked before each replication: whether the rest is not wanted any more. */
  boolean stopped();
}
