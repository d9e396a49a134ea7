package dev.hingepoint.samples.example;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Iterator;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.Consumer;
import java.util.function.Function;

/**
 * One job for each of many things, on several threads. Results are handed on in the order of the things, one at a time, by the calling thread; however many
 * things there are, only {@link #ahead} of them are taken, worked on or waiting at once, so memory stays flat.
 */
public final class Batch {
    private final int threads;

    public Batch(int threads) {
        this.threads = threads;
    }

    /** How many things are begun, at most, whose results have not been handed on. */
    public int ahead() {
        return 2 * threads;
    }

    /**
     * Does the job for each thing.
     *
     * @param job may be called from several threads at once; what should not stop the rest it answers with and does not throw
     * @throws RuntimeException what a job threw: then nothing more is begun, and what was begun is given up
     */
    public <T, R> void run(Iterator<T> things, Function<T, R> job, Consumer<R> results) {
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        try {
            Deque<Future<R>> begun = new ArrayDeque<>();
            // things are asked for only where there is room: an iterator over a stream takes one to say that there is
            // one
            while (!begun.isEmpty() || things.hasNext()) {
                while (begun.size() < ahead() && things.hasNext()) {
                    T thing = things.next();
                    begun.add(pool.submit(() -> job.apply(thing)));
                }
                results.accept(begun.remove().get());
            }
        } catch (ExecutionException failed) {
            throw new IllegalStateException("a job failed, and the batch with it", failed.getCause());
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the batch was interrupted", stopped);
        } finally {
            pool.shutdownNow();
        }
    }
}
