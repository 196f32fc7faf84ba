// SPDX-License-Identifier: Apache-2.0
package boughwright.modeller.file;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A running program, told from a later one that got the same number by when it started.
 *
 * @param pid its number
 * @param started when it started [ms since 1970]; 0 where the system does not tell
 */
record Owner(long pid, long started) {
  /** The system may tell the start of one program to different programs a little differently. */
  private static final long SAME_START = Duration.ofSeconds(5).toMillis();

  private static final Pattern NAME = Pattern.compile("(\\d{1,18})-(\\d{1,18})-.+");

  /** This program. */
  static Owner self() {
    ProcessHandle self = ProcessHandle.current();
    return new Owner(self.pid(), started(self));
  }

  private static long started(ProcessHandle handle) {
    return handle.info().startInstant().map(Instant::toEpochMilli).orElse(0L);
  }

  /** The owner a file name starts with; empty if it starts with none. */
  static Optional<Owner> of(String fileName) {
    Matcher name = NAME.matcher(fileName);
    return name.matches()
        ? Optional.of(new Owner(Long.parseLong(name.group(1)), Long.parseLong(name.group(2))))
        : Optional.empty();
  }

  /** What the names of its files start with. */
  String prefix() {
    return pid + "-" + started + "-";
  }

  boolean isRunning() {
    return ProcessHandle.of(pid)
        .filter(ProcessHandle::isAlive)
        .map(Owner::started)
        .filter(start -> start == 0 || started == 0 || Math.abs(start - started) <= SAME_START)
        .isPresent();
  }
}
