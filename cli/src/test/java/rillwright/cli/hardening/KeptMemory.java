package rillwright.cli.hardening;

import com.sun.management.GarbageCollectionNotificationInfo;
import java.lang.management.GarbageCollectorMXBean;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryUsage;
import java.util.concurrent.atomic.AtomicLong;
import javax.management.ListenerNotFoundException;
import javax.management.Notification;
import javax.management.NotificationEmitter;
import javax.management.NotificationListener;
import javax.management.openmbean.CompositeData;

/** The most memory that was in use after any collection while it listens. */
final class KeptMemory implements NotificationListener, AutoCloseable {
  private final AtomicLong most = new AtomicLong();

  KeptMemory() {
    for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
      ((NotificationEmitter) collector).addNotificationListener(this, null, null);
    }
  }

  /** In bytes; 0 if nothing was collected. */
  long mostBytes() {
    return most.get();
  }

  @Override
  public void handleNotification(Notification shown, Object unused) {
    if (shown.getType().equals(GarbageCollectionNotificationInfo.GARBAGE_COLLECTION_NOTIFICATION)) {
      long kept =
          GarbageCollectionNotificationInfo.from((CompositeData) shown.getUserData())
              .getGcInfo()
              .getMemoryUsageAfterGc()
              .values()
              .stream()
              .mapToLong(MemoryUsage::getUsed)
              .sum();
      most.accumulateAndGet(kept, Math::max);
    }
  }

  @Override
  public void close() {
    for (GarbageCollectorMXBean collector : ManagementFactory.getGarbageCollectorMXBeans()) {
      try {
        ((NotificationEmitter) collector).removeNotificationListener(this);
      } catch (ListenerNotFoundException e) {
        throw new IllegalStateException(e);
      }
    }
  }
}
