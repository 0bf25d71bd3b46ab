# Trials before and after a change: Welch's difference, equivalence and its power; determinations by lme4; global risks of loads.

library(lme4)

# --- Welch and two one-sided tests ------------------------------------------------------------------------------------
given("before-and-after.csv", "name", "before", "after", "margin")
w <- rows("before-and-after.csv")
before <- lapply(open_book("before-and-after.csv")$table$before, numbers)
after <- lapply(open_book("before-and-after.csv")$table$after, numbers)
two <- Map(function(x, y) t.test(y, x), before, after)
low <- Map(function(x, y, d) t.test(y, x, mu = -d, alternative = "greater"), before, after, w$margin)
high <- Map(function(x, y, d) t.test(y, x, mu = d, alternative = "less"), before, after, w$margin)
ninety <- Map(function(x, y) t.test(y, x, conf.level = 0.9)$conf.int, before, after)
check("before-and-after.csv", "difference", sapply(two, function(t) t$estimate[[1]] - t$estimate[[2]]), 1e-12, absolute = TRUE)
check("before-and-after.csv", "t", sapply(two, function(t) t$statistic), 1e-9)
check("before-and-after.csv", "degreesOfFreedom", sapply(two, function(t) t$parameter), 1e-9)
check("before-and-after.csv", "p", sapply(two, function(t) t$p.value), 1e-9)
check("before-and-after.csv", "low95", sapply(two, function(t) t$conf.int[1]), 1e-9)
check("before-and-after.csv", "high95", sapply(two, function(t) t$conf.int[2]), 1e-9)
check("before-and-after.csv", "low90", sapply(ninety, `[`, 1), 1e-9)
check("before-and-after.csv", "high90", sapply(ninety, `[`, 2), 1e-9)
check("before-and-after.csv", "pLow", sapply(low, function(t) t$p.value), 1e-9)
check("before-and-after.csv", "pHigh", sapply(high, function(t) t$p.value), 1e-9)

# --- Determinations: the fixed effect of lmer and its standard error, of as many of equal size on both sides -----------
given("before-and-after-sets.csv", "name", "before", "after")
s <- open_book("before-and-after-sets.csv")$table
sets <- function(cell) lapply(strsplit(cell, "|", fixed = TRUE)[[1]], numbers)
fits <- Map(function(b, a) {
  both <- c(sets(b), sets(a))
  frame <- data.frame(y = unlist(both), set = factor(rep(seq_along(both), lengths(both))),
                      side = rep(rep(0:1, c(length(sets(b)), length(sets(a)))), lengths(both)))
  lmer(y ~ side + (1 | set), frame, REML = TRUE, control = lmerControl(optimizer = "bobyqa", optCtrl = list(rhoend = 1e-12)))
}, s$before, s$after)
check("before-and-after-sets.csv", "difference", sapply(fits, function(fit) fixef(fit)[[2]]), 1e-6)
check("before-and-after-sets.csv", "standardError", sapply(fits, function(fit) sqrt(vcov(fit)[2, 2])), 1e-5)
means <- function(cell) sapply(sets(cell), mean)
check("before-and-after-sets.csv", "degreesOfFreedom",
      mapply(function(b, a) t.test(means(a), means(b))$parameter, s$before, s$after), 1e-9)

# --- The power of two one-sided tests: the chance of the scatter integrated ---------------------------------------------
power <- function(theta, margin, error, degrees) {
  t <- qt(0.95, degrees)
  most <- margin / (error * t)
  f <- function(q) {
    density <- 2 * q * degrees * dchisq(degrees * q^2, degrees)
    density * pmax(0, pnorm((margin - theta) / error - t * q) - pnorm((-margin - theta) / error + t * q))
  }
  cuts <- sort(unique(pmin(most, c(0, 1 + seq(-9, 18, 3) / sqrt(2 * degrees)))))
  cuts <- cuts[cuts >= 0]
  sum(mapply(function(from, to) integrate(f, from, to, rel.tol = 1e-12, subdivisions = 1000L)$value, head(cuts, -1), cuts[-1]))
}
given("equivalence-power.csv", "trueDifference", "margin", "deviation", "count")
e <- rows("equivalence-power.csv")
check("equivalence-power.csv", "power",
      mapply(function(theta, margin, s, n) power(theta, margin, s * sqrt(2 / n), 2 * n - 2),
             e$trueDifference, e$margin, e$deviation, e$count), 1e-8)

# --- Loads wrongly passed and failed --------------------------------------------------------------------------------------
given("load-risk.csv", "target", "tolerance", "mean", "spread", "error", "readingSpread")
l <- rows("load-risk.csv")
risk <- function(target, tolerance, mean, spread, error, reading) {
  low <- target - tolerance
  high <- target + tolerance
  within <- function(x) pnorm(high, x + error, reading) - pnorm(low, x + error, reading)
  outside <- function(x) pnorm(low, x + error, reading) + pnorm(high, x + error, reading, lower.tail = FALSE)
  over <- function(f, from, to) {
    from <- max(from, mean - 10 * spread)
    to <- min(to, mean + 10 * spread)
    if (to <= from) return(0)
    edges <- c(outer(c(low, high) - error, seq(-9, 9) * reading, `+`), mean + seq(-10, 10) * spread)
    cuts <- sort(unique(c(from, to, edges[edges > from & edges < to])))
    sum(mapply(function(a, b) integrate(function(x) dnorm(x, mean, spread) * f(x), a, b, rel.tol = 1e-11, abs.tol = 0,
                                        stop.on.error = FALSE)$value,
               head(cuts, -1), cuts[-1]))
  }
  c(over(within, -Inf, low) + over(within, high, Inf), over(outside, low, high))
}
shares <- mapply(risk, l$target, l$tolerance, l$mean, l$spread, l$error, l$readingSpread)
check("load-risk.csv", "wronglyPassed", shares[1, ], 1e-11, absolute = TRUE)
check("load-risk.csv", "wronglyFailed", shares[2, ], 1e-11, absolute = TRUE)
