# Summaries, outliers, normality, gauge studies and comparisons of laboratories.

# --- Small samples ----------------------------------------------------------------------------------------------------
given("small-samples.csv", "values")
x <- lapply(rows("small-samples.csv")$values, numbers)
error <- sapply(x, function(x) sd(x) / sqrt(length(x)))
half <- sapply(x, function(x) qt(0.975, length(x) - 1)) * error
check("small-samples.csv", "mean", sapply(x, mean), 1e-12)
check("small-samples.csv", "standardDeviation", sapply(x, sd), 1e-12)
check("small-samples.csv", "standardError", error, 1e-12)
check("small-samples.csv", "low95", sapply(x, mean) - half, 1e-12)
check("small-samples.csv", "high95", sapply(x, mean) + half, 1e-12)

# Differences of neighbouring doubles are exact, so the offset falls out before anything is rounded.
given("small-spread-large-offset.csv", "offset")
check("small-spread-large-offset.csv", "variance", sapply(rows("small-spread-large-offset.csv")$offset, function(offset) {
  x <- c(0.4, 0.5, 0.4, 0.3, 0.4, 0.6) + offset
  var(x - x[1])
}), 1e-14)

# --- Outliers ---------------------------------------------------------------------------------------------------------
given("grubbs-samples.csv", "sample", "values")
x <- lapply(rows("grubbs-samples.csv")$values, numbers)
check("grubbs-samples.csv", "statistic", sapply(x, function(x) max(abs(x - mean(x))) / sd(x)), 1e-9)
check("grubbs-samples.csv", "index", sapply(x, function(x) which.max(abs(x - mean(x))) - 1), 0)

pair <- function(x, side) {
  x <- sort(x, decreasing = side == "high")
  sum((x[-(1:2)] - mean(x[-(1:2)]))^2) / sum((x - mean(x))^2)
}
given("grubbs-pair-samples.csv", "sample", "values", "side")
s <- rows("grubbs-pair-samples.csv")
check("grubbs-pair-samples.csv", "statistic", mapply(function(cell, side) pair(numbers(cell), side), s$values, s$side), 1e-9)

given("dixon-samples.csv", "sample", "values", "ratio")
s <- rows("dixon-samples.csv")
away <- c(R10 = 1, R11 = 1, R21 = 2, R22 = 2)
cut <- c(R10 = 0, R11 = 1, R21 = 1, R22 = 2)
dixon <- function(x, ratio, high) {
  x <- sort(if (high) -x else x)
  (x[1 + away[[ratio]]] - x[1]) / (x[length(x) - cut[[ratio]]] - x[1])
}
both <- mapply(function(cell, ratio) sapply(c(FALSE, TRUE), dixon, x = numbers(cell), ratio = ratio), s$values, s$ratio)
check("dixon-samples.csv", "statistic", apply(both, 2, max), 1e-9)
check("dixon-samples.csv", "index", mapply(function(cell, end) {
  if (end == 1) which.min(numbers(cell)) - 1 else which.max(numbers(cell)) - 1
}, s$values, apply(both, 2, which.max)), 0)

# --- Normality --------------------------------------------------------------------------------------------------------
given("normality-samples.csv", "sample", "values")
x <- lapply(rows("normality-samples.csv")$values, numbers)
shapiro <- lapply(x, shapiro.test)
check("normality-samples.csv", "w", sapply(shapiro, function(test) test$statistic), 1e-8)
check("normality-samples.csv", "wP", sapply(shapiro, function(test) test$p.value), 1e-7)
squared <- sapply(x, function(x) {
  z <- (sort(x) - mean(x)) / sd(x)
  i <- seq_along(x)
  -length(x) - mean((2 * i - 1) * (pnorm(z, log.p = TRUE) + pnorm(rev(z), lower.tail = FALSE, log.p = TRUE)))
})
adjusted <- squared * (1 + 0.75 / lengths(x) + 2.25 / lengths(x)^2)
# R. B. D'Agostino and M. A. Stephens, Goodness-of-Fit Techniques (1986), table 4.9, recalled.
stephens <- function(a) {
  if (a < 0.2) 1 - exp(-13.436 + 101.14 * a - 223.73 * a^2)
  else if (a < 0.34) 1 - exp(-8.318 + 42.796 * a - 59.938 * a^2)
  else if (a < 0.6) exp(0.9177 - 4.279 * a - 1.38 * a^2)
  else exp(1.2937 - 5.709 * a + 0.0186 * a^2)
}
check("normality-samples.csv", "squared", squared, 1e-8)
check("normality-samples.csv", "adjusted", adjusted, 1e-8)
check("normality-samples.csv", "adjustedP", sapply(adjusted, stephens), 1e-8)

# --- Comparison of laboratories -----------------------------------------------------------------------------------------
given("laboratories-coal.csv", "level", "laboratory", "values")
given("laboratories-coal-levels.csv", "level")
coal <- rows("laboratories-coal.csv")
for (level in rows("laboratories-coal-levels.csv")$level) {
  here <- coal$level == level
  x <- lapply(coal$values[here], numbers)
  size <- lengths(x)
  means <- sapply(x, mean)
  spread <- sapply(x, sd)
  p <- length(x)
  within <- sum((size - 1) * spread^2) / sum(size - 1)
  grand <- sum(size * means) / sum(size)
  between <- sum(size * (means - grand)^2) / (p - 1)
  effective <- (sum(size) - sum(size^2) / sum(size)) / (p - 1)
  left <- max(0, (between - within) / effective)
  said <- c(mean = grand, sr = sqrt(within), sL = sqrt(left), sR = sqrt(within + left),
            cochran = max(spread^2) / sum(spread^2),
            grubbsLow = (mean(means) - min(means)) / sd(means), grubbsHigh = (max(means) - mean(means)) / sd(means),
            pairLow = pair(means, "low"), pairHigh = pair(means, "high"))
  for (column in names(said)) {
    check("laboratories-coal-levels.csv", column, said[[column]], 1e-9, rows("laboratories-coal-levels.csv")$level == level)
  }
  check("laboratories-coal.csv", "h", (means - mean(means)) / sd(means), 1e-9, here)
  check("laboratories-coal.csv", "k", spread * sqrt(p) / sqrt(sum(spread^2)), 1e-9, here)
}
printed <- grep("^printed", names(rows("laboratories-coal-levels.csv")), value = TRUE)
not_checked("laboratories-coal-levels.csv", printed, "recalled from ISO 5725-2:1994, annex B.1")

# --- Gauge studies ----------------------------------------------------------------------------------------------------
# A row holds the values of a cell; what stands before them names it.
long <- function(data) {
  cells <- lapply(data$values, numbers)
  names <- data[rep(seq_len(nrow(data)), lengths(cells)), setdiff(names(data), "values"), drop = FALSE]
  cbind(names, y = unlist(cells))
}
given("gauge-expected.csv", "study", "key")
not_checked("gauge-expected.csv", "printed", "seen or recalled, as the file says")
expected <- rows("gauge-expected.csv")
for (study in unique(expected$study)) {
  data <- long(rows(paste0("gauge-", study, ".csv")))
  data$operator <- factor(data$operator)
  data$sample <- factor(data$sample)
  operators <- nlevels(data$operator)
  samples <- nlevels(data$sample)
  repeats <- nrow(data) / operators / samples
  table <- anova(lm(y ~ sample * operator, data))
  ss <- table[["Sum Sq"]]
  df <- table[["Df"]]
  ms <- ss / df
  sources <- c("sample", "operator", "interaction", "repeatability")
  said <- c(setNames(ss, paste0("ss_", sources)), setNames(df, paste0("df_", sources)), setNames(ms, paste0("ms_", sources)),
            F_sample = ms[1] / ms[3], F_operator = ms[2] / ms[3], F_interaction = ms[3] / ms[4],
            p_interaction = pf(ms[3] / ms[4], df[3], df[4], lower.tail = FALSE))
  # Expected mean squares, the interaction kept apart (full) or in one with the repeats (pooled).
  for (model in c("full", "pooled")) {
    error <- if (model == "full") ms[4] else (ss[3] + ss[4]) / (df[3] + df[4])
    below <- if (model == "full") ms[3] else error
    one <- c(v_repeatability_raw = error, v_interaction_raw = (ms[3] - ms[4]) / repeats,
             v_operator_raw = (ms[2] - below) / samples / repeats, v_sample_raw = (ms[1] - below) / operators / repeats)
    if (model == "pooled") one[["v_interaction_raw"]] <- 0
    grr <- error + max(0, one[["v_interaction_raw"]]) + max(0, one[["v_operator_raw"]])
    total <- grr + max(0, one[["v_sample_raw"]])
    one <- c(one, v_grr = grr, v_total = total, pct_grr_sv = 100 * sqrt(grr / total), pct_grr_contrib = 100 * grr / total,
             ndc_unrounded = 1.41 * sqrt(max(0, one[["v_sample_raw"]]) / grr))
    said <- c(said, setNames(one, paste0(model, ".", names(one))))
  }
  here <- expected$study == study
  check("gauge-expected.csv", "value", unname(said[expected$key[here]]), 1e-8, here)
}

# --- One-way analysis of variance -----------------------------------------------------------------------
data <- long(rows("strd-anova-sirstv.csv"))
table <- anova(lm(data$y ~ factor(data$treatment)))
sirstv <- which(rows("strd-anova-certified.csv")$set == "SiRstv")
check("strd-anova-certified.csv", "betweenSquares", table[["Sum Sq"]][1], 1e-8, sirstv)
check("strd-anova-certified.csv", "withinSquares", table[["Sum Sq"]][2], 1e-8, sirstv)
check("strd-anova-certified.csv", "f", table[["F value"]][1], 1e-8, sirstv)
