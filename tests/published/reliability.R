# Check values for failure rates and trends, by R's own distributions. Reads lines from standard input:
#   rate <failures> <exposure> <confidence>       -> lower and upper rate
#   trend <time|failure> <end> <age> <age> ...    -> chi-square, freedom, its two-sided p, Laplace u, its two-sided p
#   covering <mean> <p>                           -> fewest that are enough with probability p
# One line out a line in, 15 digits. Base R alone.
say <- function(...) cat(formatC(c(...), digits = 15, format = "g"), "\n")
for (line in readLines(file("stdin"))) {
  word <- strsplit(trimws(line), "[[:space:]]+")[[1]]
  if (word[1] == "rate") {
    n <- as.numeric(word[2]); exposure <- as.numeric(word[3]); beyond <- (1 - as.numeric(word[4])) / 2
    lower <- if (n == 0) 0 else qchisq(beyond, 2 * n) / (2 * exposure)
    say(lower, qchisq(1 - beyond, 2 * n + 2) / (2 * exposure))
  } else if (word[1] == "trend") {
    end <- as.numeric(word[3]); ages <- sort(as.numeric(word[-(1:3)]))
    if (word[2] == "failure") ages <- head(ages, -1)
    n <- length(ages)
    x <- 2 * sum(log(end / ages)); p <- pchisq(x, 2 * n)
    u <- (mean(ages) - end / 2) / (end / sqrt(12 * n))
    say(x, 2 * n, min(1, 2 * min(p, 1 - p)), u, 2 * pnorm(-abs(u)))
  } else if (word[1] == "covering") {
    say(qpois(as.numeric(word[3]), as.numeric(word[2])))
  } else stop("unknown line: ", line)
}
