package club.ascham.server;

import club.ascham.ProgramVersion;
import club.ascham.backup.Backups;
import club.ascham.backup.NightlyScheduler;
import club.ascham.backup.SecondFolder;
import club.ascham.store.Stored;
import club.ascham.story.HighWater;
import club.ascham.story.Loss;
import io.smallrye.health.api.Wellness;
import jakarta.enterprise.inject.Produces;
import jakarta.inject.Singleton;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.eclipse.microprofile.health.HealthCheck;
import org.eclipse.microprofile.health.HealthCheckResponse;
import org.eclipse.microprofile.health.HealthCheckResponseBuilder;

/**
 * What a program that watches the server is told. Down is what a person has to put right and what
 * stays so until then; what comes and goes by itself, a disk's room and a clock, is data of an
 * answer that is up. None of it speaks against serving, so nothing of it is asked of readiness.
 *
 * <p>To be put right are a backup, a copy or the night's round that failed, and entries that are
 * missing; a full disk shows as a backup that failed. Readiness asks after the file alone: a proxy
 * that takes the server away mends none of the rest.
 */
@Singleton
class Wellbeing {
  private static final String WHY = "why";
  private static final int MB = 1_000_000;

  private final Backups backups;
  private final SecondFolder copies;
  private final NightlyScheduler night;
  private final HighWater highWater;
  private final DiskRoom disk;
  private final ClockWatch clock;
  private final ProgramVersion program;

  Wellbeing(
      Backups backups,
      SecondFolder copies,
      NightlyScheduler night,
      HighWater highWater,
      DiskRoom disk,
      ClockWatch clock,
      ProgramVersion program) {
    this.backups = backups;
    this.copies = copies;
    this.night = night;
    this.highWater = highWater;
    this.disk = disk;
    this.clock = clock;
    this.program = program;
  }

  @Produces
  @Wellness
  HealthCheck backups() {
    return () -> {
      HealthCheckResponseBuilder answer = downIf("backups", backups.worry());
      backups.all().stream()
          .findFirst()
          .ifPresent(newest -> answer.withData("newest", Stored.moment(newest.name().moment())));
      return answer.build();
    };
  }

  /** Where the folder lies is nobody's business here. */
  @Produces
  @Wellness
  HealthCheck copies() {
    return () -> {
      HealthCheckResponseBuilder answer = downIf("copies of backups", copies.worry());
      Optional<SecondFolder.State> state = copies.state();
      answer.withData("asked", state.isPresent());
      state
          .map(SecondFolder.State::newest)
          .ifPresent(newest -> answer.withData("newest", Stored.moment(newest)));
      return answer.build();
    };
  }

  @Produces
  @Wellness
  HealthCheck night() {
    return () -> downIf("the night’s round", night.worry()).build();
  }

  @Produces
  @Wellness
  HealthCheck record() {
    return () -> {
      List<Loss> unread = highWater.unread();
      return downIf("the record", unread.stream().map(highWater::said).findFirst())
          .withData("unreadLosses", unread.size())
          .build();
    };
  }

  @Produces
  @Wellness
  HealthCheck disk() {
    return () -> {
      HealthCheckResponseBuilder answer = HealthCheckResponse.named("the disk").up();
      try {
        Disk.Room room = disk.room();
        answer
            .withData("freeMB", room.free() / MB)
            .withData("totalMB", room.total() / MB)
            .withData("nearlyFull", disk.isNearlyFull(room));
      } catch (IOException unreadable) {
        answer.withData(WHY, "the disk can't be read");
      }
      return answer.build();
    };
  }

  @Produces
  @Wellness
  HealthCheck clock() {
    return () -> {
      HealthCheckResponseBuilder answer = HealthCheckResponse.named("the clock").up();
      clock
          .jump()
          .ifPresentOrElse(
              jump ->
                  answer
                      .withData("jumpedSeconds", jump.by().toSeconds())
                      .withData("noticed", Stored.moment(jump.noticed())),
              () -> answer.withData("jumpedSeconds", 0));
      return answer.build();
    };
  }

  @Produces
  @Wellness
  HealthCheck program() {
    return () ->
        HealthCheckResponse.named("the program")
            .up()
            .withData("version", program.version())
            .build();
  }

  private static HealthCheckResponseBuilder downIf(String name, Optional<String> worry) {
    HealthCheckResponseBuilder answer = HealthCheckResponse.named(name).status(worry.isEmpty());
    worry.ifPresent(why -> answer.withData(WHY, why));
    return answer;
  }
}
