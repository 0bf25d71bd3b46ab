# The studentised range, and the critical values made of it, of Student's t and of F.

# The studentised range: by R's qtukey, and once more by the definition, without it: a range of normal values over
# a standard deviation s of its own, which is the root of a chi-square / df.
studentised_below <- function(q, n, df) {
  integrate(function(s) sapply(s, function(one) range_below(q * one, n)) * 2 * df * s * dchisq(df * s^2, df),
            sqrt(qchisq(1e-13, df) / df), sqrt(qchisq(1e-13, df, lower.tail = FALSE) / df), rel.tol = 1e-9)$value
}
given("studentised-range.csv", "n", "df", "probability")
q <- rows("studentised-range.csv")
check("studentised-range.csv", "factor", mapply(qtukey, q$probability, q$n, q$df), 1e-6)
compare("studentised-range.csv, the probability by integration",
        q$probability, mapply(studentised_below, q$factor, q$n, q$df), 1e-6)
not_checked("studentised-range.csv", "printed", "recalled from H. L. Harter's table")

# The same, sharper, over the whole range that is promised.
sharp_range_below <- function(w, n) {
  n * integrate(function(x) dnorm(x) * (pnorm(x + w) - pnorm(x))^(n - 1), -9, 9, rel.tol = 1e-11, subdivisions = 500)$value
}
sharp_below <- function(q, n, df) {
  integrate(function(s) sapply(s, function(one) sharp_range_below(q * one, n)) * 2 * df * s * dchisq(df * s^2, df),
            sqrt(qchisq(1e-16, df) / df), sqrt(qchisq(1e-14, df, lower.tail = FALSE) / df), rel.tol = 1e-11,
            subdivisions = 2000)$value
}
given("studentised-range-points.csv", "n", "df", "probability")
sharp <- rows("studentised-range-points.csv")
check("studentised-range-points.csv", "factor", mapply(function(probability, n, df, factor) {
  rise <- 1e-4 * factor
  below <- sharp_below(factor, n, df)
  factor - (below - probability) * rise / (sharp_below(factor + rise, n, df) - below)
}, sharp$probability, sharp$n, sharp$df, sharp$factor), 5e-10)

given("critical-range-factors.csv", "n")
f <- rows("critical-range-factors.csv")
check("critical-range-factors.csv", "factor",
      sapply(f$n, function(n) uniroot(function(w) range_below(w, n) - 0.95, c(1, 10), tol = 1e-12)$root), 1e-9)

# --- Critical values --------------------------------------------------------------------------------------------------
given("grubbs-critical.csv", "n")
g <- rows("grubbs-critical.csv")
for (a in names(g)[-1]) {
  t <- qt(as.numeric(a) / g$n, g$n - 2, lower.tail = FALSE)
  check("grubbs-critical.csv", a, (g$n - 1) / sqrt(g$n) * sqrt(t^2 / (g$n - 2 + t^2)), 1e-9)
}

given("cochran-critical.csv", "p", "n")
largest <- rows("cochran-critical.csv")
for (a in c(0.05, 0.01)) {
  ratio <- qf(1 - a / largest$p, largest$n - 1, (largest$p - 1) * (largest$n - 1))
  check("cochran-critical.csv", sprintf("C%02.0f", 100 * a), 1 / (1 + (largest$p - 1) / ratio), 5.1e-7, absolute = TRUE)
}

given("mandel-critical.csv", "p")
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
  check("mandel-critical.csv", column, computed, 5.1e-7, absolute = TRUE)
}

# The factor of a two-sided tolerance interval, integrated over the standard deviation instead of the mean.
given("tolerance-factors.csv", "count", "content", "confidence")
tolerance <- rows("tolerance-factors.csv")
farthest <- function(half, content) { # how far the mean may be off while mean +- half still holds the content
  if (2 * pnorm(half) - 1 <= content) return(0)
  uniroot(function(off) pnorm(off + half) - pnorm(off - half) - content, c(0, half + 10), tol = 1e-14)$root
}
factor_of <- function(count, content, confidence) {
  reached <- function(k) {
    least <- qnorm((1 + content) / 2) / k
    held <- function(s) sapply(s, function(s) {
      (2 * pnorm(sqrt(count) * farthest(k * s, content)) - 1) * dchisq((count - 1) * s^2, count - 1) * 2 * (count - 1) * s
    })
    integrate(held, least, max(least + 1, sqrt(qchisq(1e-14, count - 1, lower.tail = FALSE) / (count - 1))), rel.tol = 1e-11,
              subdivisions = 2000)$value
  }
  uniroot(function(k) reached(k) - confidence, c(0.5, 60), tol = 1e-10)$root
}
check("tolerance-factors.csv", "factor", mapply(factor_of, tolerance$count, tolerance$content, tolerance$confidence), 1e-6)
