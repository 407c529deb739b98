/** Taking lent things back: what is here, what is missing or damaged, and the deposit. */
package club.ascham.receive;
