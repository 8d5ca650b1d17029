# The script behind weibull.json: fits and bounds by R's survival package, and bounds by a profile root.
# Reads lines of lives from standard input, one set a line:
#   <shape or free> <lower>:<upper>:<count> ...     upper NA where it had not ended
# Writes a line each: shape scale logLikelihood B10 lowerBound90(B10) upperBound90(B10), 12 digits.
# Sets without a free maximum (see conventions.existence in weibull.json) are not for survreg and not sent here.
suppressMessages(library(survival))

# Log-likelihood of F(t) = 1 - exp(-(t/scale)^shape), as the conventions of weibull.json have it.
loglik <- function(shape, scale, l, u, n) {
  A <- (l / scale)^shape
  exact <- !is.na(u) & l == u
  open <- is.na(u)
  between <- !exact & !open
  sum(n[open] * -A[open]) +
    sum(n[exact] * dweibull(l[exact], shape, scale, log = TRUE)) +
    sum(n[between] * (-A[between] + log(-expm1(A[between] - (u[between] / scale)^shape))))
}

# The highest log-likelihood with B10 held: the scale follows from the shape, which is searched.
profile <- function(B, shape, l, u, n) {
  at <- function(logshape) {
    k <- exp(logshape)
    value <- loglik(k, B / (-log(0.9))^(1 / k), l, u, n)
    if (is.finite(value)) value else -1e300
  }
  if (!is.na(shape)) return(at(log(shape)))
  around <- seq(log(0.2), log(20), length.out = 200)
  best <- which.max(vapply(around, at, 0))
  optimize(at, around[pmin(200, pmax(1, best + c(-1, 1)))], maximum = TRUE, tol = 1e-12)$objective
}

for (line in readLines(file("stdin"))) {
  word <- strsplit(trimws(line), "[[:space:]]+")[[1]]
  life <- do.call(rbind, strsplit(word[-1], ":"))
  l <- as.numeric(life[, 1]); u <- suppressWarnings(as.numeric(life[, 2])); n <- as.numeric(life[, 3])
  held <- suppressWarnings(as.numeric(word[1]))
  from <- ifelse(l == 0, NA, l)
  fit <- survreg(Surv(from, u, type = "interval2") ~ 1, dist = "weibull", weights = n,
                 scale = if (is.na(held)) 0 else 1 / held,
                 control = survreg.control(rel.tolerance = 1e-13, maxiter = 200))
  shape <- 1 / fit$scale; scale <- exp(unname(coef(fit)[1]))
  top <- loglik(shape, scale, l, u, n)
  B10 <- scale * (-log(0.9))^(1 / shape)
  over <- function(logB) 2 * (top - profile(exp(logB), held, l, u, n)) - qchisq(0.8, 1)
  low <- uniroot(over, log(B10) + c(-3, 0), extendInt = "downX", tol = 1e-11)$root
  high <- uniroot(over, log(B10) + c(0, 2), extendInt = "upX", tol = 1e-11)$root
  cat(formatC(c(shape, scale, top, B10, exp(low), exp(high)), digits = 12, format = "g"), "\n")
}
