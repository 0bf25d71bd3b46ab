# The work of RepeatSetsBenchmark in R's data.table. Prints: median ms, outliers, sets too wide, version.
suppressPackageStartupMessages(library(data.table))
half_width <- qt(0.975, 9) / sqrt(10)
slack <- 1 + 1e-9
file <- commandArgs(trailingOnly = TRUE)[1]
values <- readBin(file, "double", n = file.size(file) / 8, endian = "little")
trials <- data.table(set = rep(seq_len(length(values) / 10), each = 10), value = values)

work <- function() {
  sets <- trials[, .(mean = mean(value), deviation = sd(value), low = min(value), high = max(value)), by = set]
  sets[, half := half_width * deviation]
  sets[, within := high - low <= 0.45 * slack]
  distance <- matrix(abs(trials$value - rep(sets$mean, each = 10)), ncol = 10, byrow = TRUE)
  sets[, farthest := max.col(distance, ties.method = "first")]
  sets[, most := distance[cbind(seq_len(.N), farthest)]]
  sets[, statistic := most / deviation]
  sets[, outlier := most > 0.1 * slack & statistic > 2.289954]
  sets
}

result <- work()
times <- replicate(11, 1000 * system.time(result <<- work())[["elapsed"]])
cat(sprintf("%.2f %d %d R %s, data.table %s, %d threads\n", median(times), sum(result$outlier, na.rm = TRUE),
            sum(!result$within), getRversion(), packageVersion("data.table"), getDTthreads()))
