/**
 * The packaged server as a process of its own: what only shows when it is killed, raced or started
 * anew. These tests run after packaging, as {@code …IT}.
 */
package club.ascham.packaged;
