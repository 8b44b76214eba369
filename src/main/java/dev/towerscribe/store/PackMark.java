package dev.towerscribe.store;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collection;
import java.util.List;
import java.util.TreeSet;

/**
 * A short code that is printed on every sheet of a pack, so that sheets of two states of a job are
 * not mixed up. The same inputs give the same code on every machine.
 */
public final class PackMark {
  /** Letters in a code: 32^6 is about 1e9, so that two states of one job hardly ever share one. */
  private static final int LENGTH = 6;

  /** Five bits a letter; I, L, O and U left out, as one takes them for 1, 1, 0 and V. */
  private static final String LETTERS = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

  private static final int BITS = 5;

  private PackMark() {}

  /**
   * The code.
   *
   * @param version the program's version
   * @param inputs the text of each file the job was read from, in a fixed order
   * @param acceptedIds findings that were accepted, in any order
   * @return six letters and digits
   */
  public static String of(String version, List<byte[]> inputs, Collection<String> acceptedIds) {
    MessageDigest digest = sha256();
    add(digest, version.getBytes(StandardCharsets.UTF_8));
    for (byte[] input : inputs) {
      add(digest, input);
    }
    for (String id : new TreeSet<>(acceptedIds)) {
      add(digest, id.getBytes(StandardCharsets.UTF_8));
    }
    byte[] hash = digest.digest();
    StringBuilder mark = new StringBuilder(LENGTH);
    long bits = 0;
    for (int i = 0; i < Integer.BYTES; i++) {
      bits = bits << 8 | (hash[i] & 0xff);
    }
    for (int i = 0; i < LENGTH; i++) {
      mark.append(LETTERS.charAt((int) (bits >>> 32 - BITS * (i + 1)) & 31));
    }
    return mark.toString();
  }

  /** Each part with its length before it, so that no two lists of parts run together alike. */
  private static void add(MessageDigest digest, byte[] part) {
    digest.update((part.length + ":").getBytes(StandardCharsets.US_ASCII));
    digest.update(part);
  }

  /**
   * The hash used for marks and lists.
   *
   * @return a fresh SHA-256 (FIPS 180-4), which every Java platform has
   */
  static MessageDigest sha256() {
    try {
      return MessageDigest.getInstance("SHA-256");
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException(e);
    }
  }
}
