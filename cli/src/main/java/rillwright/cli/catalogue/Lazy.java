package rillwright.cli.catalogue;

import java.util.function.Supplier;

/** A value that is made when it is first asked for, once. */
final class Lazy<T> implements Supplier<T> {
  private final Supplier<T> maker;
  private T value;

  Lazy(Supplier<T> maker) {
    this.maker = maker;
  }

  @Override
  public synchronized T get() {
    if (value == null) {
      value = maker.get();
    }
    return value;
  }
}
