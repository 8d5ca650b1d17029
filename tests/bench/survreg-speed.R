# How long one survreg fit takes, in microseconds: reads one line of lives as weibull.R does, writes the median of 5 runs
# of 50 fits. Nothing but the call itself is timed, neither R's start nor the reading.
suppressMessages(library(survival))
word <- strsplit(trimws(readLines(file("stdin"), n = 1)), "[[:space:]]+")[[1]]
life <- do.call(rbind, strsplit(word, ":"))
l <- as.numeric(life[, 1]); u <- suppressWarnings(as.numeric(life[, 2]))
l[l == 0] <- NA
fit <- function() survreg(Surv(l, u, type = "interval2") ~ 1, dist = "weibull")
invisible(fit())
runs <- replicate(5, system.time(for (i in 1:50) fit())[["elapsed"]] / 50)
cat(round(median(runs) * 1e6), "\n")
