// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/correlated.h"

#include "core/effect/headline.h"
#include "core/effect/verdict.h"
#include "core/statistics/distributions.h"

#include <Eigen/QR>
#include <boost/math/quadrature/gauss.hpp>
#include <boost/math/special_functions/gamma.hpp>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace bothways::core {
namespace {

using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

constexpr int kNodes = 20;
constexpr std::size_t kMostWork = 100'000'000; ///< rows by columns squared: some seconds
constexpr double kDependent = 1e-10; ///< what is left of a column beside the others, of length 1

/// The effect given rho: centre + scale * t(df).
struct Component {
    double rho = 0.0;
    double weight = 0.0; ///< prior, then posterior
    double centre = 0.0;
    double scale = 0.0;
    double logLikelihood = 0.0; ///< restricted, up to a constant
};

/// rho and prior weight of each component.
std::vector<Component> componentsOf(const RhoPrior& prior)
{
    std::vector<Component> components;
    using Rule = boost::math::quadrature::gauss<double, kNodes>;
    const double half = 0.5 * std::asin(prior.highest);
    double sum = 0.0;
    const auto add = [&](double node, double weight) {
        Component component;
        component.rho = std::sin(half * (1.0 + node));
        component.weight = weight * (prior.inAngle ? prior.inAngle(component.rho) : 1.0);
        sum += component.weight;
        components.push_back(component);
    };
    for (std::size_t i = 0; i < Rule::abscissa().size(); ++i) {
        add(-Rule::abscissa()[i], Rule::weights()[i]);
        add(Rule::abscissa()[i], Rule::weights()[i]);
    }
    for (Component& component : components)
        component.weight *= (1.0 - prior.atZero) / sum;
    if (prior.atZero > 0.0) {
        components.push_back({});
        components.back().weight = prior.atZero;
    }
    return components;
}

/// Generalised least squares at any rho.
class Autoregression {
public:
    explicit Autoregression(const CorrelatedModel& model)
        : m_begins(model.begins),
          m_columns(static_cast<Eigen::Index>(model.x.count())),
          m_data(static_cast<Eigen::Index>(model.x.rows()), m_columns + 1)
    {
        const std::vector<double> x = model.x.dense();
        m_data.leftCols(m_columns) =
            Eigen::Map<const Eigen::MatrixXd>(x.data(), m_data.rows(), m_columns);
        m_data.col(m_columns) = Eigen::Map<const Eigen::VectorXd>(model.y.data(), m_data.rows());
    }

    [[nodiscard]] Eigen::Index df() const { return m_data.rows() - m_columns; }

    /// False when the columns depend on one another or nothing is left of y.
    bool fit(Component& at)
    {
        whiten(at.rho);
        m_qr.compute(m_white);
        const auto& r = m_qr.matrixQR();
        double logDeterminant = 0.0;
        for (Eigen::Index j = 0; j < m_columns; ++j) {
            if (!(std::abs(r(j, j)) > kDependent * m_white.col(j).norm()))
                return false;
            logDeterminant += std::log(std::abs(r(j, j)));
        }
        const Eigen::Index last = m_columns - 1;
        const double rss = r(m_columns, m_columns) * r(m_columns, m_columns);
        const double degrees = static_cast<double>(df());
        at.centre = r(last, m_columns) / r(last, last);
        at.scale = std::sqrt(rss / degrees) / std::abs(r(last, last));
        at.logLikelihood =
            0.5 * static_cast<double>(m_begins.size()) * std::log1p(-at.rho * at.rho) -
            logDeterminant - 0.5 * degrees * std::log(rss);
        return std::isfinite(at.centre) && std::isfinite(at.logLikelihood) && at.scale > 0.0;
    }

private:
    void whiten(double rho)
    {
        m_white = m_data;
        m_white.bottomRows(m_data.rows() - 1) -= rho * m_data.topRows(m_data.rows() - 1);
        for (const std::size_t begin : m_begins) {
            const auto row = static_cast<Eigen::Index>(begin);
            m_white.row(row) = m_data.row(row) * std::sqrt(1.0 - rho * rho);
        }
    }

    std::span<const std::size_t> m_begins;
    Eigen::Index m_columns;
    Eigen::MatrixXd m_data, m_white;
    Eigen::HouseholderQR<Eigen::MatrixXd> m_qr;
};

/// P(T <= t) for whole df by the finite series in the angle: ten times faster than the incomplete
/// beta function, absolute error below 1e-14. (Abramowitz & Stegun 1964, 26.7.3 and 26.7.4.)
double tCdfOfWholeDf(double t, int df)
{
    const double theta = std::atan(t / std::sqrt(static_cast<double>(df)));
    const double sine = std::sin(theta), cosine = std::cos(theta);
    double sum = 1.0;
    for (int j = df - 3; j >= 1; j -= 2)
        sum = 1.0 + sum * cosine * cosine * j / (j + 1);
    if (df % 2 == 0)
        return 0.5 + 0.5 * sine * sum;
    return 0.5 + (theta + (df > 1 ? sine * cosine * sum : 0.0)) / std::numbers::pi;
}

/// The effect over all rho.
class Mixture {
public:
    Mixture(std::vector<Component> components, double df)
        : m_components(std::move(components)), m_df(df)
    {
        double top = m_components.front().logLikelihood;
        for (const Component& c : m_components)
            top = std::max(top, c.logLikelihood);
        double sum = 0.0;
        for (Component& c : m_components) {
            c.weight *= std::exp(c.logLikelihood - top);
            sum += c.weight;
        }
        for (Component& c : m_components) {
            c.weight /= sum;
            m_mean += c.weight * c.centre;
            m_rho += c.weight * c.rho;
        }
        std::erase_if(m_components, [](const Component& c) { return c.weight < 1e-15; });
    }

    [[nodiscard]] double mean() const { return m_mean; }
    [[nodiscard]] double rho() const { return m_rho; }

    /// Twice the smaller tail beyond x.
    [[nodiscard]] double twoSided(double x) const
    {
        double below = 0.0, above = 0.0;
        for (const Component& c : m_components) {
            below += c.weight * tCdf((x - c.centre) / c.scale, m_df);
            above += c.weight * tCdf((c.centre - x) / c.scale, m_df);
        }
        return std::min(1.0, 2.0 * std::min(below, above));
    }

    /// Where the distribution function is p. It lies among the components' own quantiles; Newton's
    /// steps, bisection where they leave the bracket.
    [[nodiscard]] double quantile(double p) const
    {
        const double t = tQuantile(p, m_df);
        double low = m_components.front().centre + t * m_components.front().scale;
        double high = low, x = 0.0;
        for (const Component& c : m_components) {
            const double own = c.centre + t * c.scale;
            low = std::min(low, own);
            high = std::max(high, own);
            x += c.weight * own;
        }
        const double accuracy = 1e-13 * (std::abs(low) + std::abs(high));
        for (int round = 0; round < 100 && high - low > accuracy; ++round) {
            const double step = (below(x) - p) / density(x);
            (step > 0.0 ? high : low) = x;
            const double next = x - step;
            if (std::abs(step) <= accuracy)
                return next;
            x = next > low && next < high ? next : 0.5 * (low + high);
        }
        return x;
    }

private:
    [[nodiscard]] double below(double x) const
    {
        constexpr double kLongSeries = 200.0;
        double sum = 0.0;
        for (const Component& c : m_components) {
            const double t = (x - c.centre) / c.scale;
            sum += c.weight *
                   (m_df <= kLongSeries ? tCdfOfWholeDf(t, static_cast<int>(m_df)) : tCdf(t, m_df));
        }
        return sum;
    }

    [[nodiscard]] double density(double x) const
    {
        double sum = 0.0;
        for (const Component& c : m_components) {
            const double t = (x - c.centre) / c.scale;
            sum += c.weight / c.scale * std::pow(1.0 + t * t / m_df, -0.5 * (m_df + 1.0));
        }
        return m_height * sum;
    }

    std::vector<Component> m_components;
    double m_df;
    double m_height = 1.0 / (boost::math::tgamma_delta_ratio(0.5 * m_df, 0.5, Policy()) *
                             std::sqrt(m_df * std::numbers::pi)); ///< of Student's density
    double m_mean = 0.0, m_rho = 0.0;
};

} // namespace

std::optional<CorrelatedInterval> correlatedInterval(const CorrelatedModel& model,
                                                     const AnalysisOptions& options,
                                                     const RhoPrior& prior)
{
    if (model.x.rows() < model.x.count() + 1 || model.x.count() == 0 ||
        model.x.rows() * model.x.count() * model.x.count() > kMostWork)
        return std::nullopt;
    Autoregression regression(model);
    std::vector<Component> components = componentsOf(prior);
    for (Component& component : components)
        if (!regression.fit(component))
            return std::nullopt;
    const double df = static_cast<double>(regression.df());
    const Mixture mixture(std::move(components), df);

    CorrelatedInterval interval;
    const double alpha = 1.0 - options.confidence;
    interval.effect_log = mixture.mean();
    interval.low_log = mixture.quantile(0.5 * alpha);
    interval.high_log = mixture.quantile(1.0 - 0.5 * alpha);
    interval.df = df;
    interval.p = mixture.twoSided(0.0);
    interval.rho = mixture.rho();
    interval.cls = classOf(interval.low_log, interval.high_log, mixture.quantile(alpha),
                           mixture.quantile(1.0 - alpha), options.margin_pct);
    return interval;
}

} // namespace bothways::core
