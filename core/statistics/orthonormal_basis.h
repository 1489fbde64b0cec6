// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/statistics/least_squares.h"

#include <Eigen/QR>

#include <span>

/// For the .cpp files of core that go on in Eigen; no other header includes it.
namespace bothways::core {

/// Orthonormal basis of the space that a model's columns span; which of them depend on others is
/// decided as leastSquares() does.
class OrthonormalBasis {
public:
    /// @param columns  column by column, each `rows` long
    OrthonormalBasis(std::span<const double> columns, std::size_t rows)
    {
        const auto n = static_cast<Eigen::Index>(rows);
        Eigen::MatrixXd scaled = Eigen::Map<const Eigen::MatrixXd>(
            columns.data(), n, rows == 0 ? 0 : static_cast<Eigen::Index>(columns.size() / rows));
        scaled.colwise().normalize();
        m_qr.setThreshold(LeastSquaresOptions{}.tolerance);
        m_qr.compute(scaled);
    }

    [[nodiscard]] Eigen::Index rank() const { return m_qr.rank(); }

    [[nodiscard]] Eigen::MatrixXd basis() const
    {
        Eigen::MatrixXd q = Eigen::MatrixXd::Identity(m_qr.rows(), rank());
        q.applyOnTheLeft(m_qr.householderQ());
        return q;
    }

    /// Of what is left beside that space: the space of the residuals.
    [[nodiscard]] Eigen::MatrixXd complement() const
    {
        const Eigen::Index n = m_qr.rows();
        Eigen::MatrixXd q = Eigen::MatrixXd::Identity(n, n);
        q.applyOnTheLeft(m_qr.householderQ());
        return q.rightCols(n - rank());
    }

private:
    Eigen::ColPivHouseholderQR<Eigen::MatrixXd> m_qr;
};

} // namespace bothways::core
