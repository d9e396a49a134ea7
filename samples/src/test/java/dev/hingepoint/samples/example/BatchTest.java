package dev.hingepoint.samples.example;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A batch streams: what flat memory rests on, held by counting. */
class BatchTest {
    private static final int MANY = 5000;

    private final Batch batch = new Batch(4);

    /** Every thing is counted as it is taken, and as its result is handed on: what lies between is all that can be held. */
    @Test
    void neverHoldsMoreThanItSays() {
        AtomicInteger taken = new AtomicInteger();
        AtomicInteger handedOn = new AtomicInteger();
        List<Integer> held = new ArrayList<>();
        var things = IntStream.range(0, MANY)
                .peek(thing -> held.add(taken.incrementAndGet() - handedOn.get()))
                .boxed()
                .iterator();
        batch.run(things, thing -> -thing, result -> handedOn.incrementAndGet());
        assertEquals(MANY, handedOn.get());
        assertEquals(
                batch.ahead(), held.stream().mapToInt(Integer::intValue).max().orElseThrow());
    }

    @Test
    void handsResultsOnInOrderOnTheCallersThread() {
        Thread caller = Thread.currentThread();
        Set<Thread> workers = ConcurrentHashMap.newKeySet();
        List<Integer> results = new ArrayList<>();
        batch.run(
                IntStream.range(0, MANY).boxed().iterator(),
                thing -> {
                    workers.add(Thread.currentThread());
                    return thing * 2;
                },
                result -> {
                    assertSame(caller, Thread.currentThread());
                    results.add(result);
                });
        assertEquals(IntStream.range(0, MANY).map(thing -> thing * 2).boxed().toList(), results);
        assertFalse(workers.contains(caller));
    }

    /** Four jobs that wait for one another would wait for ever on fewer threads. */
    @Test
    void worksOnAllOfItsThreadsAtOnce() {
        CountDownLatch together = new CountDownLatch(4);
        List<Integer> results = new ArrayList<>();
        batch.run(
                List.of(1, 2, 3, 4).iterator(),
                thing -> {
                    together.countDown();
                    try {
                        together.await();
                    } catch (InterruptedException stopped) {
                        throw new IllegalStateException(stopped);
                    }
                    return thing;
                },
                results::add);
        assertEquals(List.of(1, 2, 3, 4), results);
    }

    @Test
    void beginsNothingMoreOnceAJobHasThrown() {
        AtomicInteger taken = new AtomicInteger();
        var things = IntStream.range(0, MANY)
                .peek(thing -> taken.incrementAndGet())
                .boxed()
                .iterator();
        IllegalArgumentException wrong = new IllegalArgumentException("thing 17");
        List<Integer> results = new ArrayList<>();
        RuntimeException thrown = assertThrows(
                RuntimeException.class,
                () -> batch.run(
                        things,
                        thing -> {
                            if (thing == 17) {
                                throw wrong;
                            }
                            return thing;
                        },
                        results::add));
        assertSame(wrong, thrown.getCause());
        assertEquals(IntStream.range(0, 17).boxed().toList(), results);
        assertTrue(taken.get() <= 17 + batch.ahead(), "taken: " + taken);
    }

    @Test
    void nothingToDoIsDone() {
        batch.run(List.<Integer>of().iterator(), thing -> thing, result -> assertEquals("nothing", result));
    }
}
