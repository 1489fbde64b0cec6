// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later

// Which interval keeps its coverage when successive pairs resemble each other?
//
// Simulates A/B/A and A/B/A/B/A studies without an effect, pair noise a first-order autoregression
// of marginal standard deviation 1 and equal spacing, and prints for each method the share of
// nominal 95 % intervals that hold the truth and their mean half-width. All methods see the same
// noise (common random numbers, fixed seed). Usage: correlated_bench [repeats, default 40000]
//
// The first six methods are those compared by Turner, Forbes, Karahalios, Taljaard, McKenzie
// (2021), Evaluation of statistical methods used in the analysis of interrupted time series
// studies: a simulation study, BMC Medical Research Methodology 21:181, as understood from its
// abstract.
//
// Long: one simulation, with all its methods side by side.

#include <Eigen/Dense>
#include <boost/math/distributions/chi_squared.hpp>
#include <boost/math/distributions/students_t.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <functional>
#include <limits>
#include <optional>
#include <random>
#include <string>
#include <vector>

namespace {

using Eigen::MatrixXd;
using Eigen::RowVectorXd;
using Eigen::VectorXd;

using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;
using StudentT = boost::math::students_t_distribution<double, Policy>;

constexpr double kNormal975 = 1.959963984540054;
constexpr int kParameters = 3; // intercept, device, time

double t975(double df)
{
    return boost::math::quantile(StudentT(df), 0.975);
}

/// Distribution function of Student's t by a table: interpolated to 1e-6, far below the
/// simulation's noise.
class TableOfT {
public:
    explicit TableOfT(double df) : m_df(df)
    {
        const StudentT t(df);
        for (int i = 0; i <= kSteps; ++i)
            m_lower.push_back(boost::math::cdf(t, -kLast * i / kSteps));
    }
    double cdf(double x) const
    {
        const double at = std::min(std::abs(x), kLast - 1e-9) * kSteps / kLast;
        const auto i = static_cast<std::size_t>(at);
        double lower = m_lower[i] + (m_lower[i + 1] - m_lower[i]) * (at - static_cast<double>(i));
        if (std::abs(x) > kLast)
            lower *= std::pow(kLast / std::abs(x), m_df);
        return x < 0 ? lower : 1.0 - lower;
    }

private:
    static constexpr int kSteps = 20000;
    static constexpr double kLast = 40.0;
    double m_df;
    std::vector<double> m_lower;
};

/// Rows of `m` made independent when their errors follow a first-order autoregression.
MatrixXd whitened(const MatrixXd& m, double rho)
{
    MatrixXd w = m;
    for (Eigen::Index i = m.rows() - 1; i > 0; --i)
        w.row(i) = m.row(i) - rho * m.row(i - 1);
    w.row(0) = m.row(0) * std::sqrt(1.0 - rho * rho);
    return w;
}

/// Everything about generalised least squares at one rho that does not depend on the response.
struct AtRho {
    double rho;
    RowVectorXd estimator; ///< delta = estimator * y
    MatrixXd residuals;    ///< RSS = |residuals * y|^2, on the whitened scale
    double v;              ///< Var(delta) = sigma^2 v, sigma^2 of the innovations
    double logRestricted;  ///< what of the log restricted likelihood depends on rho alone
    double logFull;        ///< the same for the full likelihood
};

struct Design {
    std::string name;
    MatrixXd x;
    std::vector<int> block;
    int n = 0;
    double df = 0.0;
    std::vector<AtRho> grid;  ///< -0.95 ... 0.95
    std::size_t positive = 0; ///< first node with rho > 0
    AtRho independent;
};

AtRho prepare(const MatrixXd& x, double rho)
{
    const Eigen::Index n = x.rows();
    const MatrixXd wx = whitened(x, rho);
    const MatrixXd wi = whitened(MatrixXd::Identity(n, n), rho);
    const MatrixXd inverse = (wx.transpose() * wx).inverse();
    const Eigen::HouseholderQR<MatrixXd> qr(wx);
    const MatrixXd q = qr.householderQ();
    const double logRoot = 0.5 * std::log(1.0 - rho * rho);
    return {rho,
            (inverse * wx.transpose() * wi).row(1),
            q.rightCols(n - kParameters).transpose() * wi,
            inverse(1, 1),
            logRoot + 0.5 * std::log(inverse.determinant()),
            logRoot};
}

Design makeDesign(const std::string& sequence, int pairs)
{
    Design d;
    d.name = fmt::format("{}, {} pairs a block", sequence, pairs);
    d.n = static_cast<int>(sequence.size()) * pairs;
    d.df = d.n - kParameters;
    d.x.resize(d.n, kParameters);
    for (int i = 0; i < d.n; ++i) {
        d.block.push_back(i / pairs);
        d.x.row(i) << 1.0, sequence[static_cast<std::size_t>(i / pairs)] == 'B' ? 1.0 : 0.0,
            (i - 0.5 * (d.n - 1)) / d.n;
    }
    for (int i = 0; i < 40; ++i)
        d.grid.push_back(prepare(d.x, 0.95 * (i - 19.5) / 20.0));
    d.positive = 20;
    d.independent = prepare(d.x, 0.0);
    return d;
}

struct Answer {
    double estimate = 0.0;
    double halfWidth = 0.0;
};

/// What generalised least squares says at every node of the grid.
struct Fits {
    std::vector<double> delta, rss;
    double independentDelta = 0.0, independentRss = 0.0;
};

Fits fitAll(const Design& d, const VectorXd& y)
{
    Fits fits;
    for (const AtRho& node : d.grid) {
        fits.delta.push_back(node.estimator * y);
        fits.rss.push_back((node.residuals * y).squaredNorm());
    }
    fits.independentDelta = d.independent.estimator * y;
    fits.independentRss = (d.independent.residuals * y).squaredNorm();
    return fits;
}

Answer leastSquares(const Design& d, const VectorXd& y)
{
    const double rss = (d.independent.residuals * y).squaredNorm();
    return {d.independent.estimator * y, t975(d.df) * std::sqrt(rss / d.df * d.independent.v)};
}

VectorXd leastSquaresResiduals(const Design& d, const VectorXd& y)
{
    return y - d.x * d.x.householderQr().solve(y);
}

/// Bartlett-weighted long-run variance of the least-squares estimate, lags below `lags`.
double bartlettVariance(const Design& d, const VectorXd& y, double lags)
{
    const VectorXd score =
        d.independent.estimator.transpose().cwiseProduct(leastSquaresResiduals(d, y));
    double variance = score.squaredNorm();
    for (int lag = 1; lag < d.n && lag < lags; ++lag)
        variance += 2.0 * (1.0 - lag / lags) * score.head(d.n - lag).dot(score.tail(d.n - lag));
    return std::max(variance, 0.0);
}

Answer neweyWest(const Design& d, const VectorXd& y)
{
    const double small = d.n / d.df; // the usual small-sample factor
    return {d.independent.estimator * y,
            t975(d.df) * std::sqrt(small * bartlettVariance(d, y, 2.0))};
}

double lagOne(const VectorXd& e)
{
    return e.head(e.size() - 1).dot(e.tail(e.size() - 1)) / e.squaredNorm();
}

Answer praisWinsten(const Design& d, const VectorXd& y)
{
    double rho = 0.0;
    VectorXd beta = d.x.householderQr().solve(y);
    for (int round = 0; round < 20; ++round) {
        rho = std::clamp(lagOne(y - d.x * beta), -0.95, 0.95);
        beta = whitened(d.x, rho).householderQr().solve(whitened(y, rho));
    }
    const MatrixXd wx = whitened(d.x, rho);
    const double rss = (whitened(y, rho) - wx * beta).squaredNorm();
    const double v = (wx.transpose() * wx).inverse()(1, 1);
    return {beta(1), t975(d.df) * std::sqrt(rss / d.df * v)};
}

double restricted(const Design& d, const Fits& fits, std::size_t i)
{
    return d.grid[i].logRestricted - 0.5 * d.df * std::log(fits.rss[i]);
}

std::size_t likeliest(const Design& d, const std::function<double(std::size_t)>& logLikelihood)
{
    std::size_t best = 0;
    for (std::size_t i = 1; i < d.grid.size(); ++i)
        if (logLikelihood(i) > logLikelihood(best))
            best = i;
    return best;
}

Answer restrictedLikelihood(const Design& d, const Fits& fits)
{
    const std::size_t i = likeliest(d, [&](std::size_t k) { return restricted(d, fits, k); });
    return {fits.delta[i], t975(d.df) * std::sqrt(fits.rss[i] / d.df * d.grid[i].v)};
}

/// Degrees of freedom 2 f^2 / Var f of f = sigma^2 v(rho), Var from the curvature of the restricted
/// likelihood.
Answer restrictedSatterthwaite(const Design& d, const Fits& fits)
{
    std::size_t i = likeliest(d, [&](std::size_t k) { return restricted(d, fits, k); });
    i = std::clamp<std::size_t>(i, 1, d.grid.size() - 2);
    const double step = d.grid[1].rho - d.grid[0].rho;
    const auto slope = [&](auto&& f) { return (f(i + 1) - f(i - 1)) / (2.0 * step); };
    const double curvature =
        -(restricted(d, fits, i + 1) - 2.0 * restricted(d, fits, i) + restricted(d, fits, i - 1)) /
        (step * step);
    // Profiled over sigma, Var(log f) = 2/df + (d log(rss v)/d rho)^2 / curvature.
    const double g = slope([&](std::size_t k) { return std::log(fits.rss[k] * d.grid[k].v); });
    double df = 1.0;
    if (curvature > 0.0)
        df = std::clamp(2.0 / (2.0 / d.df + g * g / curvature), 1.0, d.df);
    return {fits.delta[i], t975(df) * std::sqrt(fits.rss[i] / d.df * d.grid[i].v)};
}

Answer fullLikelihood(const Design& d, const Fits& fits)
{
    const std::size_t i = likeliest(
        d, [&](std::size_t k) { return d.grid[k].logFull - 0.5 * d.n * std::log(fits.rss[k]); });
    return {fits.delta[i], kNormal975 * std::sqrt(fits.rss[i] / d.n * d.grid[i].v)};
}

/// The widest interval among all rho that the restricted likelihood does not reject at 20 %.
Answer worstPlausible(const Design& d, const Fits& fits)
{
    const double drop = 0.5 * boost::math::quantile(boost::math::chi_squared(1.0), 0.80);
    const std::size_t best = likeliest(d, [&](std::size_t k) { return restricted(d, fits, k); });
    Answer worst{};
    for (std::size_t k = d.positive; k < d.grid.size(); ++k) {
        if (restricted(d, fits, k) < restricted(d, fits, best) - drop)
            continue;
        const double half = t975(d.df) * std::sqrt(fits.rss[k] / d.df * d.grid[k].v);
        if (half > worst.halfWidth)
            worst = {fits.delta[k], half};
    }
    return worst.halfWidth > 0.0 ? worst : restrictedLikelihood(d, fits);
}

/// Two means a block, least squares on them.
Answer batchMeans(const Design& d, const VectorXd& y)
{
    const int batches = 2 * (d.block.back() + 1);
    const int size = d.n / batches;
    MatrixXd x(batches, kParameters);
    VectorXd mean(batches);
    for (int b = 0; b < batches; ++b) {
        x.row(b) = d.x.middleRows(b * size, size).colwise().mean();
        mean(b) = y.segment(b * size, size).mean();
    }
    const VectorXd beta = x.householderQr().solve(mean);
    const double df = batches - kParameters;
    const double s2 = (mean - x * beta).squaredNorm() / df;
    return {beta(1), t975(df) * std::sqrt(s2 * (x.transpose() * x).inverse()(1, 1))};
}

using Weight = std::function<double(double)>;

/// Generalised least squares averaged over rho with restricted-likelihood weights: a mixture of t.
/// @param weight  prior density of rho on (0, 0.95), up to a factor
/// @param atZero  prior probability that there is no correlation at all
Answer averaged(const Design& d, const Fits& fits, const TableOfT& t, const Weight& weight,
                double atZero)
{
    const double independent =
        d.independent.logRestricted - 0.5 * d.df * std::log(fits.independentRss);
    double top = independent;
    double prior = 0.0;
    for (std::size_t k = d.positive; k < d.grid.size(); ++k) {
        top = std::max(top, restricted(d, fits, k));
        prior += weight(d.grid[k].rho);
    }
    std::vector<double> w{atZero / (1.0 - atZero) * prior * std::exp(independent - top)};
    std::vector<double> centre{fits.independentDelta};
    std::vector<double> se{std::sqrt(fits.independentRss / d.df * d.independent.v)};
    for (std::size_t k = d.positive; k < d.grid.size(); ++k) {
        w.push_back(weight(d.grid[k].rho) * std::exp(restricted(d, fits, k) - top));
        centre.push_back(fits.delta[k]);
        se.push_back(std::sqrt(fits.rss[k] / d.df * d.grid[k].v));
    }
    double sum = 0.0, mean = 0.0, spread = 0.0;
    for (std::size_t k = 0; k < w.size(); ++k) {
        sum += w[k];
        mean += w[k] * centre[k];
        spread += w[k] * se[k];
    }
    mean /= sum;
    spread /= sum;
    const auto quantile = [&](double p) {
        double low = mean - 60.0 * spread, high = mean + 60.0 * spread;
        for (int round = 0; round < 26; ++round) {
            const double x = 0.5 * (low + high);
            double below = 0.0;
            for (std::size_t k = 0; k < w.size(); ++k)
                below += w[k] * t.cdf((x - centre[k]) / se[k]);
            (below < p * sum ? low : high) = x;
        }
        return 0.5 * (low + high);
    };
    const double low = quantile(0.025), high = quantile(0.975);
    return {0.5 * (low + high), 0.5 * (high - low)};
}

VectorXd noise(int n, double rho, std::mt19937_64& random, std::normal_distribution<double>& normal)
{
    VectorXd y(n);
    y(0) = normal(random);
    for (int i = 1; i < n; ++i)
        y(i) = rho * y(i - 1) + std::sqrt(1.0 - rho * rho) * normal(random);
    return y;
}

/// Critical value of |delta|/sqrt(Bartlett variance with all lags), simulated for the design
/// without correlation.
double fixedBCritical(const Design& d)
{
    std::mt19937_64 random(1);
    std::normal_distribution<double> normal;
    std::vector<double> ratio;
    for (int i = 0; i < 20000; ++i) {
        const VectorXd y = noise(d.n, 0.0, random, normal);
        ratio.push_back(std::abs((d.independent.estimator * y).value()) /
                        std::sqrt(bartlettVariance(d, y, 0.5 * d.n)));
    }
    std::nth_element(ratio.begin(), ratio.begin() + 19000, ratio.end());
    return ratio[19000];
}

struct Method {
    std::string name;
    std::function<std::optional<Answer>(const VectorXd&, const Fits&)> answer;
};

std::vector<Method> methodsFor(const Design& d, const TableOfT& t)
{
    const auto byWeight = [&d, &t](Weight weight, double atZero = 0.0) {
        return [&d, &t, weight, atZero](const VectorXd&, const Fits& f) {
            return averaged(d, f, t, weight, atZero);
        };
    };
    const auto jeffreys = [](double r) { return 1.0 / std::sqrt(1.0 - r * r); };
    const double critical = fixedBCritical(d);
    const bool halves = d.n / (d.block.back() + 1) % 2 == 0;
    return {
        {"least squares (the headline)", [&d](auto& y, auto&) { return leastSquares(d, y); }},
        {"least squares, Newey-West lag 1", [&d](auto& y, auto&) { return neweyWest(d, y); }},
        {"Prais-Winsten", [&d](auto& y, auto&) { return praisWinsten(d, y); }},
        {"restricted likelihood", [&d](auto&, auto& f) { return restrictedLikelihood(d, f); }},
        {"restricted likelihood, Satterthwaite",
         [&d](auto&, auto& f) { return restrictedSatterthwaite(d, f); }},
        {"ARIMA(1,0,0), full likelihood", [&d](auto&, auto& f) { return fullLikelihood(d, f); }},
        {"widest plausible rho (80 %)", [&d](auto&, auto& f) { return worstPlausible(d, f); }},
        {"fixed-b, Bartlett, b = 0.5",
         [&d, critical](auto& y, auto&) {
             return Answer{d.independent.estimator * y,
                           critical * std::sqrt(bartlettVariance(d, y, 0.5 * d.n))};
         }},
        {"two batch means a block",
         [&d, halves](auto& y, auto&) {
             return halves ? std::optional(batchMeans(d, y)) : std::nullopt;
         }},
        {"averaged over rho, flat", byWeight([](double) { return 1.0; })},
        {"averaged over rho, 1/(1-rho^2)", byWeight([](double r) { return 1.0 / (1.0 - r * r); })},
        {"averaged over rho, 1/sqrt(1-rho^2)", byWeight(jeffreys)},
        {"averaged, 1/8 at 0, rest 1/sqrt(1-rho^2)", byWeight(jeffreys, 0.125)},
    };
}

} // namespace

int main(int argc, char** argv)
{
    const int repeats = argc > 1 ? std::max(100, std::atoi(argv[1])) : 40000;
    fmt::print("{} repeats; coverage and mean half-width at rho = 0, 0.3, 0.6; standard error of a "
               "coverage "
               "{:.4f}\n",
               repeats, std::sqrt(0.95 * 0.05 / repeats));
    for (const std::string sequence : {"ABA", "ABABA"}) {
        for (const int pairs : {2, 4, 8}) {
            const Design design = makeDesign(sequence, pairs);
            const TableOfT t(design.df);
            const std::vector<Method> methods = methodsFor(design, t);
            std::vector<std::string> rows(methods.size());
            for (const double rho : {0.0, 0.3, 0.6}) {
                std::mt19937_64 random(20260314);
                std::normal_distribution<double> normal;
                std::vector<int> hits(methods.size());
                std::vector<double> width(methods.size());
                for (int i = 0; i < repeats; ++i) {
                    const VectorXd y = noise(design.n, rho, random, normal);
                    const Fits fits = fitAll(design, y);
                    for (std::size_t m = 0; m < methods.size(); ++m) {
                        if (const auto answer = methods[m].answer(y, fits)) {
                            hits[m] += std::abs(answer->estimate) <= answer->halfWidth;
                            width[m] += answer->halfWidth;
                        }
                    }
                }
                for (std::size_t m = 0; m < methods.size(); ++m)
                    rows[m] += fmt::format("  {:.4f} {:5.2f}", 1.0 * hits[m] / repeats,
                                           width[m] / repeats);
            }
            fmt::print("{}\n", design.name);
            for (std::size_t m = 0; m < methods.size(); ++m)
                fmt::print("  {:<42}{}\n", methods[m].name, rows[m]);
            std::fflush(stdout);
        }
    }
}
