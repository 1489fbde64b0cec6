// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/statistics/durbin_watson.h"

#include "core/statistics/orthonormal_basis.h"

#include <Eigen/Eigenvalues>

#include <algorithm>
#include <cassert>
#include <cmath>
#include <complex>
#include <numbers>
#include <vector>

namespace bothways::core {
namespace {

constexpr std::size_t kMostResiduals = 20'000;
constexpr std::size_t kMostEigenvalues = 1500;
constexpr long kMostWork = 5'000'000;        ///< rows times squared columns, for one value
constexpr Eigen::Index kEigenvaluesPay = 10; ///< from one column on 10 rows, as with many days

using Complex = std::complex<double>;
using RowMatrix = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// Sum of the logs of numbers whose real parts are positive: the continuous branch.
class LogProduct {
public:
    void multiply(Complex factor)
    {
        m_norm *= std::norm(factor);
        m_phase += std::arg(factor);
        if (m_norm > 1e100 || m_norm < 1e-100) {
            m_log += std::log(m_norm);
            m_norm = 1.0;
        }
    }
    double logSize() const { return 0.5 * (m_log + std::log(m_norm)); }
    double phase() const { return m_phase; }

private:
    double m_norm = 1.0, m_log = 0.0, m_phase = 0.0;
};

/// Complex product without the library's care for infinities, which costs more than the product.
Complex times(Complex a, Complex b)
{
    return {a.real() * b.real() - a.imag() * b.imag(), a.real() * b.imag() + a.imag() * b.real()};
}

Complex inverse(Complex a)
{
    const double norm = std::norm(a);
    return {a.real() / norm, -a.imag() / norm};
}

/// det(I + wS)^(-1/2), S = A - d on the space of the residuals.
class QuadraticForm {
public:
    QuadraticForm(double d, std::span<const double> design, std::size_t n) : m_d(d)
    {
        assert(n > 0 && design.size() % n == 0);
        const OrthonormalBasis space(design, n);
        m_degreesOfFreedom = static_cast<Eigen::Index>(n) - space.rank();
        const bool wide = space.rank() * kEigenvaluesPay > static_cast<Eigen::Index>(n);
        if (wide && n <= kMostEigenvalues) {
            const Eigen::MatrixXd u = space.complement();
            Eigen::MatrixXd au = 2.0 * u;
            au.row(0) -= u.row(0);
            au.bottomRows(1) -= u.bottomRows(1);
            au.topRows(au.rows() - 1) -= u.bottomRows(au.rows() - 1);
            au.bottomRows(au.rows() - 1) -= u.topRows(au.rows() - 1);
            m_eigenvalues = Eigen::SelfAdjointEigenSolver<Eigen::MatrixXd>(u.transpose() * au,
                                                                           Eigen::EigenvaluesOnly)
                                .eigenvalues();
        } else {
            m_basis = space.basis();
            m_columns = static_cast<std::size_t>(m_basis.cols());
            m_solved.resize(m_columns);
            m_gram.resize(m_columns * m_columns);
        }
    }

    [[nodiscard]] Eigen::Index degreesOfFreedom() const { return m_degreesOfFreedom; }

    /// Whether a few hundred values of it are had in a second or so.
    [[nodiscard]] bool isFeasible() const
    {
        return m_eigenvalues.size() > 0 ||
               m_basis.rows() * std::max<Eigen::Index>(m_basis.cols(), 8) * m_basis.cols() <
                   Eigen::Index{kMostWork};
    }

    /// Roughly the standard deviation of e'(A - d)e/2: 1/spread is the unit of w.
    [[nodiscard]] double spread() const
    {
        return std::sqrt(0.5 * static_cast<double>(m_degreesOfFreedom) *
                         ((2.0 - m_d) * (2.0 - m_d) + 2.0));
    }

    /// Trace of S: positive when d lies below the mean of D.
    [[nodiscard]] double trace() const
    {
        if (m_eigenvalues.size() > 0)
            return (m_eigenvalues.array() - m_d).sum();
        const Eigen::Index n = m_basis.rows();
        double sum = 0.0;
        for (Eigen::Index i = 0; i < n; ++i) {
            sum += entry(i) * (1.0 - m_basis.row(i).squaredNorm());
            if (i + 1 < n)
                sum += 2.0 * m_basis.row(i).dot(m_basis.row(i + 1));
        }
        return sum;
    }

    /// Log of the transform.
    Complex logTransform(Complex w)
    {
        LogProduct determinant;
        for (const double eigenvalue : m_eigenvalues)
            determinant.multiply(1.0 + w * (eigenvalue - m_d));
        if (m_eigenvalues.size() == 0)
            eliminate(w, determinant);
        return {-0.5 * determinant.logSize(), -0.5 * determinant.phase()};
    }

private:
    /// Pivots of B, then of Q'B^-1 Q.
    void eliminate(Complex w, LogProduct& determinant)
    {
        std::fill(m_gram.begin(), m_gram.end(), Complex());
        const Complex square = times(w, w);
        Complex inversePivot;
        for (Eigen::Index row = 0; row < m_basis.rows(); ++row) {
            // B has 1 + w(a - d) on its diagonal and -w beside it.
            const Complex pivot = 1.0 + w * entry(row) - times(square, inversePivot);
            const Complex back = times(w, inversePivot);
            determinant.multiply(pivot);
            inversePivot = inverse(pivot);
            const double* q = m_basis.data() + row * m_basis.cols();
            for (std::size_t j = 0; j < m_columns; ++j) {
                m_solved[j] = q[j] + times(back, m_solved[j]);
                const Complex scaled = times(m_solved[j], inversePivot);
                for (std::size_t i = 0; i <= j; ++i)
                    m_gram[j * m_columns + i] += times(m_solved[i], scaled);
            }
        }
        multiplyByGram(determinant);
    }

    double entry(Eigen::Index row) const
    {
        return (row == 0 || row == m_basis.rows() - 1 ? 1.0 : 2.0) - m_d;
    }

    /// Pivots of the symmetric matrix Q'B^-1 Q by elimination in place; its real part is positive
    /// definite, so no exchange of rows is needed.
    void multiplyByGram(LogProduct& determinant)
    {
        for (std::size_t k = 0; k < m_columns; ++k) {
            const Complex pivot = m_gram[k * m_columns + k];
            determinant.multiply(pivot);
            const Complex inversePivot = inverse(pivot);
            for (std::size_t j = k + 1; j < m_columns; ++j) {
                const Complex factor = times(m_gram[j * m_columns + k], inversePivot);
                for (std::size_t i = k + 1; i <= j; ++i)
                    m_gram[j * m_columns + i] -= times(factor, m_gram[i * m_columns + k]);
            }
        }
    }

    double m_d;
    Eigen::Index m_degreesOfFreedom = 0;
    Eigen::VectorXd m_eigenvalues; ///< of A on the space of the residuals; else the next four
    RowMatrix m_basis;
    std::size_t m_columns = 0;
    std::vector<Complex> m_solved, m_gram;
};

/// P(Q < 0) for the form with the given sign, on the path Re w = c.
class Inversion {
public:
    /// @param reach  the largest |Re w| that keeps B positive definite
    Inversion(QuadraticForm& form, double sign, double reach)
        : m_form(form), m_sign(sign), m_unit(std::min(1.0 / form.spread(), 0.5 * reach))
    {
        m_shift = std::clamp(saddle(0.98 * reach), m_unit, 0.98 * reach);
        m_peak = logSize(m_shift);
    }

    double probability()
    {
        double step = 0.25;
        double sum = term(0.0) + side(step, step) + side(-step, -step);
        double previous = step * sum;
        for (int halvings = 0; halvings < 7; ++halvings) {
            sum += side(0.5 * step, step) + side(-0.5 * step, -step);
            step *= 0.5;
            const double refined = step * sum;
            const bool rests = std::abs(refined - previous) < 1e-11 * std::abs(refined);
            previous = refined;
            if (halvings > 0 && rests)
                break;
        }
        return previous * std::exp(m_peak) / std::numbers::pi;
    }

private:
    static constexpr double kStretch = std::numbers::pi / 2.0;
    static constexpr double kNegligible = 1e-17;

    double logSize(double c) { return m_form.logTransform(m_sign * c).real(); }

    /// Minimum over c of the (convex) log transform, to a per cent of the reach: golden section.
    double saddle(double reach)
    {
        constexpr double kGolden = 0.6180339887498949;
        double low = 0.0, high = reach;
        double a = high - kGolden * (high - low), b = low + kGolden * (high - low);
        double atA = logSize(a), atB = logSize(b);
        while (high - low > 0.01 * reach) {
            if (atA < atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - kGolden * (high - low);
                atA = logSize(a);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + kGolden * (high - low);
                atB = logSize(b);
            }
        }
        return 0.5 * (low + high);
    }

    /// Integrand at t, relative to its size on the real axis.
    double term(double t)
    {
        const double v = m_unit * std::exp(kStretch * std::sinh(t));
        const Complex w(m_shift, v);
        const Complex log = m_form.logTransform(m_sign * w);
        const double size = std::exp(log.real() - m_peak) * v * kStretch * std::cosh(t);
        return size * (std::polar(1.0, log.imag()) / w).real();
    }

    /// Terms at t, t + step, ... until they no longer count.
    double side(double t, double step)
    {
        double sum = 0.0;
        for (int small = 0; small < 3 && std::abs(t) < 4.5; t += step) {
            const double value = term(t);
            sum += value;
            small = std::abs(value) < kNegligible ? small + 1 : 0;
        }
        return sum;
    }

    QuadraticForm& m_form;
    double m_sign, m_unit;
    double m_shift = 0.0, m_peak = 0.0;
};

TailProbabilities tailsOf(double d, QuadraticForm& form)
{
    if (!(d > 0.0))
        return {0.0, 1.0};
    if (d >= 4.0)
        return {1.0, 0.0};
    // The smaller tail is integrated; the eigenvalues of A lie in [0, 4).
    if (form.trace() > 0.0) {
        const double below = std::min(Inversion(form, 1.0, 1.0 / d).probability(), 1.0);
        return {below, 1.0 - below};
    }
    const double above = std::min(Inversion(form, -1.0, 1.0 / (4.0 - d)).probability(), 1.0);
    return {1.0 - above, above};
}

} // namespace

TailProbabilities durbinWatsonTails(double d, std::span<const double> design, std::size_t n)
{
    QuadraticForm form(d, design, n);
    assert(form.degreesOfFreedom() >= 1);
    return tailsOf(d, form);
}

bool durbinWatsonMayBeHad(std::size_t n, std::size_t columns)
{
    // Half of the columns may depend on others: days with one pair have no slope.
    const std::size_t rank = std::max<std::size_t>(columns / 2, 8);
    return n <= kMostEigenvalues || n * rank * rank < kMostWork;
}

std::optional<DurbinWatson> durbinWatson(std::span<const double> residuals,
                                         std::span<const double> design)
{
    const std::size_t n = residuals.size();
    if (n < 3 || n > kMostResiduals || design.size() % n != 0)
        return std::nullopt;
    double squares = 0.0, products = 0.0, steps = 0.0;
    const double largest =
        std::abs(*std::max_element(residuals.begin(), residuals.end(),
                                   [](double a, double b) { return std::abs(a) < std::abs(b); }));
    if (!(largest > 0.0) || !std::isfinite(largest))
        return std::nullopt;
    for (std::size_t i = 0; i < n; ++i) {
        const double e = residuals[i] / largest;
        squares += e * e;
        if (i + 1 < n) {
            const double next = residuals[i + 1] / largest;
            products += e * next;
            steps += (next - e) * (next - e);
        }
    }
    DurbinWatson result{steps / squares, products / squares, 1.0};
    QuadraticForm form(result.d, design, n);
    if (form.degreesOfFreedom() < 2 || !form.isFeasible())
        return std::nullopt;
    const TailProbabilities tails = tailsOf(result.d, form);
    result.p = std::min(1.0, 2.0 * std::min(tails.below, tails.above));
    return result;
}

} // namespace bothways::core
