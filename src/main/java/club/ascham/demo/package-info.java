/** The invented club that a new user meets: its files, moved in time so that it is always now. */
package club.ascham.demo;
