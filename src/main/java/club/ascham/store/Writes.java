package club.ascham.store;

import jakarta.interceptor.InterceptorBinding;
import jakarta.transaction.Transactional;
import java.lang.annotation.ElementType;
import java.lang.annotation.Inherited;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A use case that changes the record: one transaction, behind a fair gate. SQLite lets one writer
 * in and is unfair to those that wait; the gate lets them in by turn.
 */
@InterceptorBinding
@Transactional(rollbackOn = Exception.class)
@Inherited
@Target({ElementType.TYPE, ElementType.METHOD})
@Retention(RetentionPolicy.RUNTIME)
public @interface Writes {}
