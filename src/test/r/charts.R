# Control charts: constants, limits, and average run lengths without a simulation.

k <- rows("chart-constants.csv")
given("chart-constants.csv", "n")
d2 <- sapply(k$n, function(n) {
  integrate(function(x) 1 - pnorm(x)^n - pnorm(x, lower.tail = FALSE)^n, -10, 10, rel.tol = 1e-12)$value
})
# The mean square of the range.
square <- sapply(k$n, function(n) {
  integrate(function(w) 2 * w * sapply(w, function(one) 1 - range_below(one, n)), 0, 12, rel.tol = 1e-11)$value
})
d3 <- sqrt(square - d2^2)
c4 <- sqrt(2 / (k$n - 1)) * exp(lgamma(k$n / 2) - lgamma((k$n - 1) / 2))
wide <- 3 * sqrt(1 - c4^2) / c4
said <- list(d2 = d2, d3 = d3, c4 = c4, A2 = 3 / (d2 * sqrt(k$n)), A3 = 3 / (c4 * sqrt(k$n)), B3 = pmax(0, 1 - wide),
             B4 = 1 + wide, D3 = pmax(0, 1 - 3 * d3 / d2), D4 = 1 + 3 * d3 / d2, E2 = 3 / d2)
for (name in names(said)) check("chart-constants.csv", name, said[[name]], 1e-9, absolute = TRUE)

given("chart-piston-rings-limits.csv", "key")
limits <- rows("chart-piston-rings-limits.csv")
rings <- do.call(rbind, lapply(rows("chart-piston-rings.csv")$values, numbers))
five <- lapply(said, function(constant) constant[k$n == 5])
centre <- mean(rings)
range <- mean(apply(rings, 1, function(x) diff(range(x))))
spread <- mean(apply(rings, 1, sd))
lines <- c(xbarbar = centre, Rbar = range, Sbar = spread, sigma_R = range / five$d2, sigma_S = spread / five$c4,
           XR.LCL = centre - five$A2 * range, XR.UCL = centre + five$A2 * range, R.LCL = five$D3 * range,
           R.UCL = five$D4 * range, XS.LCL = centre - five$A3 * spread, XS.UCL = centre + five$A3 * spread,
           S.LCL = five$B3 * spread, S.UCL = five$B4 * spread)
check("chart-piston-rings-limits.csv", "value", unname(lines[limits$key]), 1e-8)

flow <- rows("chart-flow-rate.csv")
given("chart-flow-rate.csv", "values")
x <- numbers(flow$values)
moving <- abs(diff(x))
sigma <- mean(moving) * sqrt(pi) / 2
check_cells("chart-flow-rate.csv", "movingRanges", list(moving), 1e-12)
check("chart-flow-rate.csv", "mean", mean(x), 1e-9)
check("chart-flow-rate.csv", "meanMovingRange", mean(moving), 1e-9)
check("chart-flow-rate.csv", "sigma", sigma, 1e-9)
check("chart-flow-rate.csv", "low", mean(x) - 3 * sigma, 1e-9)
check("chart-flow-rate.csv", "high", mean(x) + 3 * sigma, 1e-9)
not_checked("chart-flow-rate.csv", c("printedMovingRange", "printedLow", "printedHigh"), "printed in the e-Handbook")

given("chart-ewma.csv", "index", "value")
check("chart-ewma.csv", "average", Reduce(function(z, x) 0.3 * x + 0.7 * z, rows("chart-ewma.csv")$value, 50,
                                          accumulate = TRUE)[-1], 1e-10)
given("chart-ewma-limits.csv", "index")
index <- as.character(rows("chart-ewma-limits.csv")$index)
index <- as.numeric(ifelse(index == "final", "Inf", index))
half <- 3 * 2.0539 * sqrt(0.3 / 1.7 * (1 - 0.7^(2 * index)))
check("chart-ewma-limits.csv", "low", 50 - half, 1e-10)
check("chart-ewma-limits.csv", "high", 50 + half, 1e-10)

given("chart-cusum.csv", "group", "mean")
x <- rows("chart-cusum.csv")$mean
cusum <- function(step) Reduce(function(sum, one) max(0, sum + one), step, 0, accumulate = TRUE)[-1]
check("chart-cusum.csv", "high", cusum(x - 325 - 0.3175), 1e-9, absolute = TRUE)
check("chart-cusum.csv", "low", cusum(325 - x - 0.3175), 1e-9, absolute = TRUE)

# --- Average run lengths: integral equations on the points of Gauss and Legendre ----------------------------------------
# One side of a CUSUM that begins at 0: L(u) = 1 + L(0) Phi(k - u - shift) + int L(x) phi(x - u + k - shift) dx.
one_side <- function(slack, interval, shift) {
  g <- legendre(80, 0, interval)
  u <- c(0, g$at)
  stays <- cbind(pnorm(slack - u - shift), sweep(outer(u, g$at, function(u, x) dnorm(x - u + slack - shift)), 2, g$weight, "*"))
  # A side the shift leads away from may be too long to be told from never.
  tryCatch(solve(diag(length(u)) - stays, rep(1, length(u)))[1], error = function(e) Inf)
}
given("cusum-run-lengths.csv", "slack", "interval", "shift")
r <- rows("cusum-run-lengths.csv")
check("cusum-run-lengths.csv", "length", mapply(function(slack, interval, shift) {
  1 / (1 / one_side(slack, interval, shift) + 1 / one_side(slack, interval, -shift))
}, r$slack, r$interval, r$shift), 1e-7)

given("ewma-run-lengths.csv", "lambda", "width", "shift")
r <- rows("ewma-run-lengths.csv")
check("ewma-run-lengths.csv", "length", mapply(function(lambda, width, shift) {
  limit <- width * sqrt(lambda / (2 - lambda))
  g <- legendre(161, -limit, limit)
  stays <- sweep(outer(g$at, g$at, function(u, x) dnorm((x - (1 - lambda) * u) / lambda - shift) / lambda), 2, g$weight, "*")
  length <- solve(diag(161) - stays, rep(1, 161))
  1 + sum(g$weight * dnorm(g$at / lambda - shift) / lambda * length)
}, r$lambda, r$width, r$shift), 1e-7)

# --- Average run lengths of run rules: a Markov chain whose states are what the rules must remember ---------------------
# A point falls into one of eight zones; for each side a state remembers which of the last two points lay beyond two,
# which of the last four beyond one, and how many in a row lay on the side.
edges <- c(-Inf, -3:3, Inf)
run_length <- function(rules, shift) {
  p <- diff(pnorm(edges - shift))
  run <- if ("eight-on-one-side" %in% rules) 8 else if ("nine-on-one-side" %in% rules) 9 else Inf
  known <- c("beyond-limits", "two-of-three", "four-of-five", "eight-on-one-side", "nine-on-one-side")
  if (!all(rules %in% known)) stop("no such rule: ", paste(rules, collapse = ", "))
  after <- function(state, zone) {
    if (zone %in% c(1, 8)) return(NULL)
    next_state <- integer()
    for (side in 1:2) {
      depth <- if (side == 1) zone - 4 else 5 - zone
      old <- state[(side - 1) * 7 + 1:7]
      two <- as.integer(depth >= 3)
      one <- as.integer(depth >= 2)
      row <- if (depth >= 1) old[7] + 1L else 0L
      if ("two-of-three" %in% rules && two && sum(old[1:2]) >= 1) return(NULL)
      if ("four-of-five" %in% rules && one && sum(old[3:6]) >= 3) return(NULL)
      if (row >= run) return(NULL)
      next_state <- c(next_state,
                      if ("two-of-three" %in% rules) c(two, old[1]) else c(0L, 0L),
                      if ("four-of-five" %in% rules) c(one, old[3:5]) else rep(0L, 4),
                      if (is.finite(run)) row else 0L)
    }
    next_state
  }
  states <- list(rep(0L, 14))
  place <- new.env()
  assign(paste(states[[1]], collapse = ""), 1, place)
  moves <- list()
  i <- 0
  while ((i <- i + 1) <= length(states)) {
    for (zone in 1:8) {
      to <- after(states[[i]], zone)
      if (is.null(to)) next
      key <- paste(to, collapse = "")
      if (!exists(key, place, inherits = FALSE)) {
        states[[length(states) + 1]] <- to
        assign(key, length(states), place)
      }
      moves[[length(moves) + 1]] <- c(i, get(key, place), zone)
    }
  }
  moves <- do.call(rbind, moves)
  chain <- matrix(0, length(states), length(states))
  for (row in seq_len(nrow(moves))) {
    at <- moves[row, 1:2, drop = FALSE]
    chain[at] <- chain[at] + p[moves[row, 3]]
  }
  solve(diag(length(states)) - chain, rep(1, length(states)))[1]
}
given("run-rule-lengths.csv", "rules", "shift")
r <- rows("run-rule-lengths.csv")
check("run-rule-lengths.csv", "length",
      mapply(function(rules, shift) run_length(strsplit(rules, ";")[[1]], shift), r$rules, r$shift), 1e-9)
