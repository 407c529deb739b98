package club.ascham.register;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import club.ascham.form.Typed;
import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RegisterSearchTest {
  @ParameterizedTest
  @ValueSource(
      strings = {
        "/register",
        "/register?words=sedge+A22&kind=limbs&state=ready&hand=left&bowIn=66&sort=-bought&page=3",
        "/register?state=any",
        "/register?words=%22%25%26%3D&sort=-code",
        "/register?kind=riser&sort=maker"
      })
  void aSearch_staysInItsAddress(String address) {
    assertEquals(address, RegisterSearch.read(query(address)).address());
  }

  @Test
  void whatCantBeRead_isLeftOut_andSaid() {
    Typed typed =
        query("/register?kind=bicycle&state=lent&hand=both&bowIn=200&sort=colour&page=-1");
    RegisterSearch search = RegisterSearch.read(typed);
    assertEquals("/register", search.address());
    assertEquals(Set.of("kind", "state", "hand", "bowIn", "page"), typed.faults().keySet());
  }

  @Test
  void theSameColumnAgain_turnsTheOrderRound() {
    RegisterSearch byMaker = RegisterSearch.read(query("/register?sort=maker&page=4"));
    assertEquals("ascending", byMaker.ariaSort(RegisterSearch.Sort.MAKER));
    assertNull(byMaker.ariaSort(RegisterSearch.Sort.CODE));
    assertEquals("/register?sort=-maker", byMaker.by(RegisterSearch.Sort.MAKER).address());
    assertEquals("/register?sort=state", byMaker.by(RegisterSearch.Sort.STATE).address());
  }

  @Test
  void whatItIsNarrowedBy_isSaid() {
    assertTrue(RegisterSearch.read(query("/register?sort=maker")).said().isEmpty());
    assertEquals(
        "“sedge” · limbs · ready · left-handed · for a bow of 66 in",
        RegisterSearch.read(
                query("/register?words=sedge&kind=limbs&state=ready&hand=left&bowIn=66"))
            .said());
  }

  private static Typed query(String address) {
    Map<String, String> texts = new LinkedHashMap<>();
    if (address.contains("?")) {
      for (String part : address.substring(address.indexOf('?') + 1).split("&")) {
        String[] pair = part.split("=", 2);
        texts.put(pair[0], URLDecoder.decode(pair[1], StandardCharsets.UTF_8));
      }
    }
    return Typed.of(texts);
  }
}
