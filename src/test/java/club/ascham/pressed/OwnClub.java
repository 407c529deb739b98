package club.ascham.pressed;

import io.quarkus.test.junit.QuarkusTestProfile;

/** A club of these tests' own: they lend, lose and retire whatever there is. */
public class OwnClub implements QuarkusTestProfile {}
