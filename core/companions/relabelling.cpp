// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/companions/relabelling.h"

#include "core/statistics/orthonormal_basis.h"

#include <algorithm>
#include <bit>
#include <cmath>
#include <numeric>

namespace bothways::core {
namespace {

constexpr std::size_t kMostPairs = 20'000;
constexpr std::size_t kMostSums = 150'000; ///< a deal, pairs by columns
constexpr double kAllRounding = 1e-13;
constexpr double kCannotBeTold = -1.0; ///< below every r^2, so no hit

/// xoshiro256** of D. Blackman and S. Vigna (2018), seeded by splitmix64 as they advise.
class Generator {
public:
    explicit Generator(std::uint64_t seed)
    {
        for (std::uint64_t& word : m_state) {
            seed += 0x9E3779B97F4A7C15ULL;
            std::uint64_t z = seed;
            z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
            z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
            word = z ^ (z >> 31U);
        }
    }

    /// Uniform on 0 .. range - 1. (D. Lemire, "Fast random integer generation in an interval", ACM
    /// Trans. Model. Comput. Simul. 29 (2019) 3.)
    std::uint32_t below(std::uint32_t range)
    {
        std::uint64_t product = std::uint64_t{high()} * range;
        if (static_cast<std::uint32_t>(product) < range) {
            const std::uint32_t threshold = (0U - range) % range;
            while (static_cast<std::uint32_t>(product) < threshold)
                product = std::uint64_t{high()} * range;
        }
        return static_cast<std::uint32_t>(product >> 32U);
    }

private:
    std::uint32_t high()
    {
        const std::uint64_t result = std::rotl(m_state[1] * 5, 7) * 9;
        const std::uint64_t t = m_state[1] << 17U;
        m_state[2] ^= m_state[0];
        m_state[3] ^= m_state[1];
        m_state[1] ^= m_state[2];
        m_state[0] ^= m_state[3];
        m_state[2] ^= t;
        m_state[3] = std::rotl(m_state[3], 45);
        return static_cast<std::uint32_t>(result >> 32U);
    }

    std::uint64_t m_state[4]{};
};

/// Number of ways to choose k of n, or kMostDeals + 1 where that is more.
long long choices(std::size_t n, std::size_t k)
{
    long long count = 1;
    for (std::size_t i = 1; i <= k; ++i) {
        count = count * static_cast<long long>(n - k + i) / static_cast<long long>(i);
        if (count > kMostDeals)
            return kMostDeals + 1;
    }
    return count;
}

/// r^2 of any deal of labels. Each pair has a row: m*, then its row of Q.
class Correlation {
public:
    Correlation(std::span<const double> y, const Columns& nuisance)
    {
        const auto n = static_cast<Eigen::Index>(y.size());
        const OrthonormalBasis space(nuisance.dense(), y.size());
        const Eigen::MatrixXd q = space.basis();
        Eigen::VectorXd rest = Eigen::Map<const Eigen::VectorXd>(y.data(), n);
        for (int pass = 0; pass < 2; ++pass) // the second takes away what the first rounded
            rest -= q * (q.transpose() * rest);
        m_rank = static_cast<std::size_t>(space.rank());
        m_square = rest.squaredNorm();
        m_varies =
            rest.norm() > kAllRounding * Eigen::Map<const Eigen::VectorXd>(y.data(), n).norm();
        m_rows.reserve(y.size() * (m_rank + 1));
        for (Eigen::Index i = 0; i < n; ++i) {
            m_rows.push_back(rest(i));
            for (Eigen::Index j = 0; j < space.rank(); ++j)
                m_rows.push_back(q(i, j));
        }
        m_sum.resize(m_rank + 1);
    }

    [[nodiscard]] std::size_t rank() const { return m_rank; }
    /// False when the nuisance columns alone account for everything but rounding.
    [[nodiscard]] bool varies() const { return m_varies; }

    /// kCannotBeTold for labels that depend on the nuisance columns.
    double squared(std::span<const std::uint32_t> labelled)
    {
        return m_rank == 2 ? squared3(labelled) : squaredAny(labelled);
    }

private:
    /// The usual model, an intercept and a slope: three sums in registers.
    [[nodiscard]] double squared3(std::span<const std::uint32_t> labelled) const
    {
        double a = 0.0, b = 0.0, c = 0.0;
        for (const std::uint32_t i : labelled) {
            const double* row = m_rows.data() + std::size_t{3} * i;
            a += row[0];
            b += row[1];
            c += row[2];
        }
        return ratio(a, static_cast<double>(labelled.size()) - b * b - c * c, labelled.size());
    }

    double squaredAny(std::span<const std::uint32_t> labelled)
    {
        std::fill(m_sum.begin(), m_sum.end(), 0.0);
        for (const std::uint32_t i : labelled)
            for (std::size_t j = 0; j <= m_rank; ++j)
                m_sum[j] += m_rows[i * (m_rank + 1) + j];
        double left = static_cast<double>(labelled.size());
        for (std::size_t j = 1; j <= m_rank; ++j)
            left -= m_sum[j] * m_sum[j];
        return ratio(m_sum[0], left, labelled.size());
    }

    [[nodiscard]] double ratio(double product, double left, std::size_t size) const
    {
        if (left <= 1e-9 * static_cast<double>(size))
            return kCannotBeTold;
        return product * product / (left * m_square);
    }

    std::size_t m_rank = 0;
    double m_square = 0.0;
    bool m_varies = false;
    std::vector<double> m_rows, m_sum;
};

/// The smallest r^2 whose |t| is at least (1 - 1e-9) of the observed one.
double threshold(double observed, double df)
{
    if (observed >= 1.0)
        return 1.0 - 1e-12;
    constexpr double kTie = (1.0 - 1e-9) * (1.0 - 1e-9);
    const double t2 = kTie * df * observed / (1.0 - observed);
    return std::min(t2 / (df + t2), observed);
}

} // namespace

double smallestLabelsP(const Analysis& analysis)
{
    const auto device =
        std::count_if(analysis.pairs.begin(), analysis.pairs.end(), [&](const Pair& pair) {
            return !sameWord(pair.configuration, analysis.baseline);
        });
    const bool balanced = 2 * static_cast<std::size_t>(device) == analysis.pairs.size();
    return (balanced ? 2.0 : 1.0) / static_cast<double>(analysis.companions.labels->deals);
}

bool nextChoice(std::vector<std::uint32_t>& places, std::size_t n)
{
    std::size_t i = places.size();
    while (i > 0 && places[i - 1] == n - places.size() + i - 1)
        --i;
    if (i == 0)
        return false;
    ++places[i - 1];
    for (; i < places.size(); ++i)
        places[i] = places[i - 1] + 1;
    return true;
}

std::optional<LabelsTest> dealLabelsAgain(std::span<const double> y,
                                          const std::vector<bool>& device, const Columns& nuisance,
                                          std::uint64_t seed)
{
    const std::size_t n = y.size();
    if (n < 3 || n > kMostPairs || n * (nuisance.count() + 1) > kMostSums)
        return std::nullopt;
    // Labelling the others instead turns x* into -x*: the same |t| from fewer sums.
    const auto ofDevice = static_cast<std::size_t>(std::count(device.begin(), device.end(), true));
    const bool dealt = ofDevice <= n - ofDevice;
    std::vector<std::uint32_t> labelled;
    for (std::size_t i = 0; i < n; ++i)
        if (device[i] == dealt)
            labelled.push_back(static_cast<std::uint32_t>(i));

    Correlation correlation(y, nuisance);
    const double df = static_cast<double>(n) - static_cast<double>(correlation.rank()) - 1.0;
    const double observed = correlation.squared(labelled);
    if (labelled.empty() || df < 1.0 || !correlation.varies() || !(observed >= 0.0) ||
        !std::isfinite(observed))
        return std::nullopt;
    const double atLeast = threshold(observed, df);

    LabelsTest test;
    test.deals = choices(n, labelled.size());
    test.exact = test.deals <= kMostDeals;
    long long hits = 0;
    if (test.exact) {
        std::iota(labelled.begin(), labelled.end(), 0U);
        do
            hits += correlation.squared(labelled) >= atLeast ? 1 : 0;
        while (nextChoice(labelled, n));
        test.p = static_cast<double>(hits) / static_cast<double>(test.deals);
        return test;
    }
    test.deals = kMostDeals;
    Generator generator(seed);
    std::vector<std::uint32_t> cards(n);
    std::iota(cards.begin(), cards.end(), 0U);
    for (long long deal = 0; deal < test.deals; ++deal) {
        for (std::size_t i = 0; i < labelled.size(); ++i)
            std::swap(cards[i], cards[i + generator.below(static_cast<std::uint32_t>(n - i))]);
        hits += correlation.squared({cards.data(), labelled.size()}) >= atLeast ? 1 : 0;
    }
    test.p = static_cast<double>(1 + hits) / static_cast<double>(1 + test.deals);
    return test;
}

} // namespace bothways::core
