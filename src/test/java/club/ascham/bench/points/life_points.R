# Run: Rscript src/test/java/club/ascham/bench/points/life_points.R (needs R with survival), from the project's folder. Used by bench's LifePointsTest.
# Lives by R: the curve by survfit (Kaplan-Meier, Greenwood, log-log band, delayed entry), the Weibull
# life by survreg where all parts were watched from new, else by a general maximiser of the likelihood;
# spreads from its curvature, intervals by Student's t on log scale as the page says.
library(survival)

FEWEST <- 5
STEEPEST <- 50
rows <- list()

likelihood <- function(theta, entered, end, failed) {
  shape <- exp(theta[1]); scale <- exp(theta[2])
  old <- ifelse(entered > 0, (entered / scale)^shape, 0)
  sum(log(shape / scale) + (shape - 1) * log(end[failed] / scale)) - sum((end / scale)^shape - old)
}

weibull <- function(entered, end, failed) {
  unit <- max(end)
  minus <- function(theta) -likelihood(theta, entered / unit, end / unit, failed)
  best <- list(value = Inf)
  for (start in c(0.7, 1.5, 3, 6, 12)) {
    tried <- tryCatch(optim(c(log(start), 0), minus, method = "Nelder-Mead",
                            control = list(reltol = 1e-15, maxit = 20000)), error = function(e) NULL)
    if (!is.null(tried) && tried$value < best$value) best <- tried
  }
  best <- optim(best$par, minus, method = "BFGS", control = list(reltol = 1e-16))
  theta <- best$par
  curved <- matrix(0, 2, 2); step <- 1e-3
  for (i in 1:2) for (j in 1:2) for (a in c(1, -1)) for (b in c(1, -1)) {
    at <- theta; at[i] <- at[i] + a * step; at[j] <- at[j] + b * step
    curved[i, j] <- curved[i, j] + a * b * minus(at) / (4 * step^2)
  }
  told <- list(shape = exp(theta[1]), scale = unit * exp(theta[2]),
               loglik = -best$value - sum(failed) * log(unit), var = solve(curved))
  if (all(entered == 0)) {
    kept <- end > 0
    fit <- survreg(Surv(end[kept], failed[kept]) ~ 1, dist = "weibull", control = list(rel.tolerance = 1e-14, maxiter = 200))
    stopifnot(abs(1 / fit$scale / told$shape - 1) < 1e-5, abs(exp(coef(fit)) / told$scale - 1) < 1e-5)
    # Its parameters are log scale and log(1 / shape).
    told <- list(shape = 1 / fit$scale, scale = unname(exp(coef(fit))), loglik = fit$loglik[2],
                 var = matrix(c(fit$var[2, 2], -fit$var[1, 2], -fit$var[1, 2], fit$var[1, 1]), 2))
  }
  told
}

said <- function(x) paste(ifelse(is.na(x), "null", sprintf("%.12g", x)), collapse = " ")

curve <- function(entered, end, failed) {
  if (!any(failed)) return(rep("none", 5))
  # What was on a bow for no time at all was watched at no failure.
  kept <- end > 0
  fit <- survfit(Surv(entered[kept], end[kept], failed[kept]) ~ 1, conf.type = "log-log", conf.int = 0.95)
  at <- fit$n.event > 0
  value <- fit$surv[at]; low <- fit$lower[at]; high <- fit$upper[at]
  gone <- value < 1e-12
  value[gone] <- 0; low[gone] <- 0
  # No better than before, once all who were watched have failed.
  for (i in seq_along(high)) if (gone[i]) high[i] <- if (i == 1) 1 else high[i - 1]
  c(said(fit$time[at]), said(value), said(low), said(high), paste(ifelse(fit$n.risk[at] < 5, "true", "false"), collapse = " "))
}

point <- function(name, failed, suspended = c(), entered = NULL, fault = "", edge = FALSE) {
  row <- c(point = name, edge = if (edge) "edge" else "", failed = if (length(failed)) said(failed) else "none",
           suspended = if (length(suspended)) said(suspended) else "", entered = if (is.null(entered)) "" else said(entered),
           fault = fault)
  names <- c("=shape", "=scale", "=logLikelihood", "=b10", "=median", "=mean", "=own.shapeLow", "=own.shapeHigh",
             "=own.scaleLow", "=own.scaleHigh", "=own.medianLow", "=own.medianHigh", "=own.b10Low", "=own.b10High",
             "=survival.time", "=survival.value", "=survival.low", "=survival.high", "=survival.few")
  out <- setNames(rep("", length(names)), names)
  if (fault == "") {
    end <- c(failed, suspended); fails <- rep(c(TRUE, FALSE), c(length(failed), length(suspended)))
    from <- if (is.null(entered)) rep(0, length(end)) else entered
    out[15:19] <- curve(from, end, fails)
    fit <- if (length(failed) >= FEWEST && length(unique(failed)) > 1) weibull(from, end, fails)
    if (is.null(fit) || fit$shape > STEEPEST) {
      out[1:6] <- "null"
    } else {
      q <- function(p) fit$scale * (-log(1 - p))^(1 / fit$shape)
      reach <- function(by) exp(qt(0.95, length(failed) - 1) * sqrt(c(by, 1) %*% fit$var %*% c(by, 1))[1])
      of <- function(p) reach(-log(-log(1 - p)) / fit$shape)
      shapes <- exp(qt(0.95, length(failed) - 1) * sqrt(fit$var[1, 1]))
      out[1:14] <- sapply(c(fit$shape, fit$scale, fit$loglik, q(0.1), q(0.5), fit$scale * gamma(1 + 1 / fit$shape),
                            fit$shape / shapes, fit$shape * shapes, fit$scale / reach(0), fit$scale * reach(0),
                            q(0.5) / of(0.5), q(0.5) * of(0.5), q(0.1) / of(0.1), q(0.1) * of(0.1)), said)
    }
  }
  rows[[length(rows) + 1]] <<- c(row, out)
}

set.seed(20261130)
handbook <- c(54, 187, 216, 240, 244, 335, 361, 373, 375, 386)
point("e-Handbook 8.4.1.3: ten failed, ten in use at 500", handbook, rep(500, 10))
point("e-Handbook 8.2.1.5", c(10, 32, 56, 98, 122, 181), c(50, 100, 125, 150, rep(200, 10)))
point("a small set that is often quoted wrongly", c(30, 49, 82, 90, 96), c(10, 45, 100))
point("delayed entry", c(40, 75, 90, 110, 120, 60, 130), c(50, 100, 95, 140), c(0, 30, 60, 0, 80, 20, 50, 0, 70, 10, 0))
point("none left over", c(210, 340, 365, 402, 455, 480, 520, 610))
point("they fail young", c(2, 5, 9, 20, 55, 140, 300), rep(400, 8))
drawn <- function(n, shape, scale, until) { t <- round(rweibull(n, shape, scale), 1); list(t[t <= until], rep(until, sum(t > until))) }
for (of in list(c(25, 2.5, 700, 900), c(60, 1.2, 400, 500), c(200, 3, 365, 400))) {
  parts <- drawn(of[1], of[2], of[3], of[4])
  point(sprintf("%d strings of shape %g and scale %g, seen for %d days", of[1], of[2], of[3], of[4]), parts[[1]], parts[[2]])
}
ages <- round(rweibull(40, 2.2, 600), 0) + 1; entry <- round(runif(40, 0, 500))
seen <- ages > entry; ages <- ages[seen]; entry <- entry[seen]; fails <- ages <= 800
order <- c(which(fails), which(!fails))
point("strings older than the record", ages[fails], ages[!fails], entry[order])
point("loans and not days", c(8, 11, 13, 14, 17, 18), c(4, 6, 9, 12, 19, 20))
point("none failed", c(), c(50, 60), edge = TRUE)
point("one part, failed", c(50), edge = TRUE)
point("four failed: no life is told", c(100, 150, 200, 230), c(300, 300), edge = TRUE)
point("five failed: a life is told", c(100, 150, 200, 230, 260), c(300, 300), edge = TRUE)
point("five at one age", rep(200, 5), c(300, 300), edge = TRUE)
point("five at two ages", c(100, 100, 100, 130, 130), c(150), edge = TRUE)
point("so much alike that no shape is told", c(1000, 1001, 1002, 1003, 1004), edge = TRUE)
point("what fails and what leaves at one age", c(100, 200, 200, 300, 400), c(200, 300, 400), edge = TRUE)
point("entered at an age at which one fails", c(100, 200, 300, 400, 500), c(450, 600), c(0, 100, 200, 0, 300, 100, 500), edge = TRUE)
point("the only one watched fails first: the curve falls to nothing", c(50, 200, 300, 350, 400), c(420, 500), c(0, 100, 100, 120, 150, 200, 100), edge = TRUE)
point("all failed: the curve ends at nothing", c(1, 2, 3, 4, 5, 6), edge = TRUE)
point("suspended at age 0: fitted today", c(100, 150, 200, 230, 260), c(0, 0, 300), edge = TRUE)
point("suspended before any failed", c(100, 150, 200, 230, 260), c(20, 30, 40), edge = TRUE)
point("in thousands of shots, and in shots", c(10200, 14100, 15900, 18800, 21700, 24000), c(9000, 26000), edge = TRUE)
point("failed at age 0 is refused", c(0, 100, 150, 200, 230), fault = "failed", edge = TRUE)
point("entered at its end is refused", c(100, 200), c(300), c(0, 200, 0), "entered", edge = TRUE)
point("one age at entry too few", c(100, 200), c(300), c(0, 0), "entered", edge = TRUE)
point("a negative age", c(100, 200), c(-1), fault = "suspended", edge = TRUE)

table <- as.data.frame(do.call(rbind, rows), check.names = FALSE)
file <- "src/test/resources/club/ascham/bench/points/life.csv"
writeLines(c("# Lives of parts, from those that failed and those that have not.",
             sprintf("# Made by: Rscript src/test/java/club/ascham/bench/points/life_points.R (%s, survival %s)",
                     R.version.string, packageVersion("survival"))), file)
suppressWarnings(write.table(table, file, append = TRUE, sep = ",", row.names = FALSE, qmethod = "double",
                             quote = which(names(table) %in% c("point"))))
cat(sprintf("life: %d points, %d of them edges\n", nrow(table), sum(table$edge != "")))
