# Computes anew, in R, the figures of src/test/resources/reference/ that are no printed ones, and says how far the files
# lie from it. Run from the project's folder: Rscript src/test/r/reference.R
# Made with R 4.2.2; stops with status 1 when a file is off by more than its share below.

folder <- "src/test/resources/reference"
failed <- FALSE

rows <- function(name) {
  read.csv(file.path(folder, name), comment.char = "#", check.names = FALSE, stringsAsFactors = FALSE)
}

numbers <- function(cell) as.numeric(strsplit(as.character(cell), ";")[[1]])

# The largest difference relative to what R says, among the figures that exist.
compare <- function(name, filed, computed, at_most) {
  filed <- as.numeric(filed)
  computed <- as.numeric(computed)
  kept <- !is.na(filed) & !is.na(computed)
  if (!any(kept) || length(filed) != length(computed)) {
    stop(name, ": nothing to compare")
  }
  size <- pmax(abs(computed[kept]), 1e-300)
  off <- max(ifelse(filed[kept] == computed[kept], 0, abs(filed[kept] - computed[kept]) / size))
  if (off > at_most) failed <<- TRUE
  cat(sprintf("%-44s %4d figures, off by at most %.1e%s\n", name, sum(kept), off,
              if (off > at_most) "  TOO FAR" else ""))
}

# --- Student's t, ranges, Grubbs, Cochran, Mandel --------------------------------------------------------------------
t <- rows("t-points.csv")
compare("t-points.csv", t$point, qt(t$upperTail, t$degreesOfFreedom, lower.tail = FALSE), 1e-10)

range_within <- function(width, n) {
  n * integrate(function(x) dnorm(x) * (pnorm(x + width) - pnorm(x))^(n - 1), -12, 12, rel.tol = 1e-12)$value
}
f <- rows("critical-range-factors.csv")
compare("critical-range-factors.csv", f$factor,
        sapply(f$n, function(n) uniroot(function(w) range_within(w, n) - 0.95, c(1, 10), tol = 1e-12)$root), 1e-9)

grubbs <- function(n, a) {
  t <- qt(a / n, n - 2, lower.tail = FALSE)
  (n - 1) / sqrt(n) * sqrt(t^2 / (n - 2 + t^2))
}
g <- rows("grubbs-critical.csv")
for (a in names(g)[-1]) {
  compare(paste("grubbs-critical.csv", a), g[[a]], grubbs(g$n, as.numeric(a)), 1e-9)
}
s <- rows("grubbs-samples.csv")
compare("grubbs-samples.csv", s$statistic,
        sapply(s$values, function(cell) { x <- numbers(cell); max(abs(x - mean(x))) / sd(x) }), 1e-9)

cochran <- function(p, n, a) {
  f <- qf(1 - a / p, n - 1, (p - 1) * (n - 1))
  1 / (1 + (p - 1) / f)
}
largest <- rows("cochran-critical.csv")
compare("cochran-critical.csv C05", largest$C05, cochran(largest$p, largest$n, 0.05), 6e-6)
compare("cochran-critical.csv C01", largest$C01, cochran(largest$p, largest$n, 0.01), 6e-6)

m <- rows("mandel-critical.csv")
for (column in names(m)[-1]) {
  a <- as.numeric(sub(".*?(0\\..*)$", "\\1", column))
  if (startsWith(column, "h")) {
    t <- qt(1 - a / 2, m$p - 2)
    computed <- (m$p - 1) * t / sqrt(m$p * (t^2 + m$p - 2))
  } else {
    n <- as.numeric(sub("k_n(.).*", "\\1", column))
    computed <- sqrt(m$p / (1 + (m$p - 1) / qf(1 - a, n - 1, (m$p - 1) * (n - 1))))
  }
  compare(paste("mandel-critical.csv", column), m[[column]], computed, 2e-6)
}

# --- Control charts ----------------------------------------------------------------------------------------------------
k <- rows("chart-constants.csv")
d2 <- sapply(k$n, function(n) {
  integrate(function(x) 1 - pnorm(x)^n - pnorm(x, lower.tail = FALSE)^n, -10, 10, rel.tol = 1e-12)$value
})
c4 <- sqrt(2 / (k$n - 1)) * exp(lgamma(k$n / 2) - lgamma((k$n - 1) / 2))
compare("chart-constants.csv d2", k$d2, d2, 1e-9)
compare("chart-constants.csv c4", k$c4, c4, 1e-9)
compare("chart-constants.csv A3", k$A3, 3 / (c4 * sqrt(k$n)), 1e-9)
compare("chart-constants.csv E2", k$E2, 3 / d2, 1e-9)

rings <- do.call(rbind, lapply(rows("chart-piston-rings.csv")$values, numbers))
limits <- rows("chart-piston-rings-limits.csv")
limit <- function(key) limits$value[limits$key == key]
compare("chart-piston-rings-limits.csv", sapply(c("xbarbar", "Rbar", "Sbar", "sigma_R", "sigma_S"), limit),
        c(mean(rings), mean(apply(rings, 1, function(x) diff(range(x)))), mean(apply(rings, 1, sd)),
          mean(apply(rings, 1, function(x) diff(range(x)))) / d2[k$n == 5], mean(apply(rings, 1, sd)) / c4[k$n == 5]),
        1e-8)

# --- Normality ---------------------------------------------------------------------------------------------------------
n <- rows("normality-samples.csv")
shapiro <- lapply(n$values, function(cell) shapiro.test(numbers(cell)))
compare("normality-samples.csv W", n$w, sapply(shapiro, function(test) test$statistic), 1e-8)
compare("normality-samples.csv p of W", n$wP, sapply(shapiro, function(test) test$p.value), 1e-7)
squared <- sapply(n$values, function(cell) {
  x <- sort(numbers(cell))
  z <- (x - mean(x)) / sd(x)
  i <- seq_along(x)
  -length(x) - mean((2 * i - 1) * (pnorm(z, log.p = TRUE) + pnorm(rev(z), lower.tail = FALSE, log.p = TRUE)))
})
compare("normality-samples.csv A squared", n$squared, squared, 1e-8)

# --- Repeat values, comparisons of laboratories, curves ----------------------------------------------------------------
small <- rows("small-samples.csv")
compare("small-samples.csv", small$standardDeviation, sapply(small$values, function(cell) sd(numbers(cell))), 1e-8)
compare("small-samples.csv 95 %", small$high95,
        sapply(small$values, function(cell) {
          x <- numbers(cell)
          mean(x) + qt(0.975, length(x) - 1) * sd(x) / sqrt(length(x))
        }), 1e-8)

coal <- rows("laboratories-coal.csv")
filed <- rows("laboratories-coal-levels.csv")
for (level in unique(coal$level)) {
  x <- lapply(coal$values[coal$level == level], numbers)
  size <- lengths(x)
  means <- sapply(x, mean)
  p <- length(x)
  within <- sum((size - 1) * sapply(x, var)) / sum(size - 1)
  grand <- sum(size * means) / sum(size)
  between <- sum(size * (means - grand)^2) / (p - 1)
  effective <- (sum(size) - sum(size^2) / sum(size)) / (p - 1)
  sr <- sqrt(within)
  sR <- sqrt(within + max(0, (between - within) / effective))
  one <- filed[filed$level == level, ]
  compare(paste("laboratories-coal-levels.csv", level), c(one$mean, one$sr, one$sR), c(grand, sr, sR), 1e-9)
  compare(paste("laboratories-coal.csv h", level), coal$h[coal$level == level], (means - mean(means)) / sd(means), 1e-9)
  spread <- sapply(x, sd)
  compare(paste("laboratories-coal.csv k", level), coal$k[coal$level == level],
          spread * sqrt(p) / sqrt(sum(spread^2)), 1e-9)
}

predicted <- rows("fit-predictions.csv")
for (i in seq_len(nrow(predicted))) {
  one <- predicted[i, ]
  data <- rows(one$file)
  fit <- if (one$degree == 0) lm(y ~ x - 1, data) else lm(y ~ x, data)
  compare(paste("fit-predictions.csv", one$file, one$x), c(one$fit, one$low, one$high),
          predict(fit, data.frame(x = one$x), interval = "prediction"), 1e-9)
}
certified <- rows("strd-fit-certified.csv")
for (i in which(certified$degree <= 2)) {
  one <- certified[i, ]
  data <- rows(one$file)
  fit <- switch(one$degree + 1, lm(y ~ x - 1, data), lm(y ~ x, data), lm(y ~ x + I(x^2), data))
  compare(paste("strd-fit-certified.csv", one$file), one$residualStandardDeviation, summary(fit)$sigma, 1e-9)
}

sums <- rows("welch-satterthwaite.csv")
for (i in seq_len(nrow(sums))) {
  u <- numbers(sums$uncertainties[i])
  nu <- numbers(sums$degreesOfFreedom[i])
  compare(paste("welch-satterthwaite.csv row", i), c(sums$combined[i], sums$effective[i]),
          c(sqrt(sum(u^2)), sum(u^2)^2 / sum(u^4 / nu)), 1e-9)
}

if (failed) quit(status = 1)
