# Critical values for which there is no formula, by simulation: Dixon's ratios and Grubbs' test of a pair.
# The files were written by: Rscript src/test/r/simulations.R write (two million samples, about three minutes). The check
# draws fewer samples from another seed, so that it takes seconds; it sees a wrong table, not a wrong fourth decimal.

levels_dixon <- c(0.10, 0.05, 0.025, 0.01, 0.005)
levels_pair <- c(0.005, 0.025, 0.05, 0.10)

# Normal samples of n, one a column, each in order.
ordered <- function(n, count) {
  x <- rnorm(n * count)
  matrix(x[order(rep(seq_len(count), each = n), x, method = "radix")], n)
}
in_parts <- function(count, statistic) unlist(lapply(rep(min(count, 1e5), count / min(count, 1e5)), statistic))

ratio_of <- function(n) if (n <= 7) "r10" else if (n <= 10) "r11" else if (n <= 13) "r21" else "r22"
dixon_points <- function(n, count) {
  away <- if (n <= 10) 2 else 3
  cut <- if (n <= 7) 0 else if (n <= 13) 1 else 2
  quantile(in_parts(count, function(part) {
    x <- ordered(n, part)
    (x[away, ] - x[1, ]) / (x[n - cut, ] - x[1, ])
  }), 1 - levels_dixon, names = FALSE)
}
pair_points <- function(n, count) {
  squares <- function(x) colSums(sweep(x, 2, colMeans(x))^2)
  quantile(in_parts(count, function(part) {
    x <- ordered(n, part)
    squares(x[-(1:2), , drop = FALSE]) / squares(x)
  }), levels_pair, names = FALSE)
}

if ("write" %in% commandArgs(TRUE)) {
  set.seed(20261127)
  line <- function(...) cat(paste(c(...), collapse = ","), "\n", sep = "")
  for (n in 3:15) line(n, ratio_of(n), sprintf("%.4f", dixon_points(n, 2e6)))
  for (n in 4:15) line(n, sprintf("%.4f", pair_points(n, 2e6)))
} else {
  set.seed(20261128)
  given("dixon-simulated.csv", "n", "ratio")
  d <- rows("dixon-simulated.csv")
  if (!all(d$ratio == sapply(d$n, ratio_of))) fail("dixon-simulated.csv: another ratio than usual for its n")
  points <- sapply(d$n, dixon_points, count = 1e5)
  for (i in seq_along(levels_dixon)) check("dixon-simulated.csv", names(d)[2 + i], points[i, ], 0.006, absolute = TRUE)
  given("grubbs-pair-simulated.csv", "n")
  g <- rows("grubbs-pair-simulated.csv")
  points <- sapply(g$n, pair_points, count = 1e5)
  for (i in seq_along(levels_pair)) check("grubbs-pair-simulated.csv", names(g)[1 + i], points[i, ], 0.004, absolute = TRUE)
}
