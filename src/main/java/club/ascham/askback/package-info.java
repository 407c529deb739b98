/**
 * What is unsafe and in somebody's hands: who has it, how to reach them, and why it must not be
 * shot. First page, loans, receiving, slips, fleet and API all ask {@link
 * club.ascham.askback.AskBack}; nobody looks for it in a way of its own.
 *
 * <p>It asks back what is withdrawn, what failed an inspection, what a dangerous report stands
 * against, and what readings that change keep in.
 */
package club.ascham.askback;
