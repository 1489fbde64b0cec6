// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/recording/trace.h"
#include "core/screening/context.h"
#include "core/study/study.h"

#include <map>
#include <string>
#include <vector>

namespace bothways::core {

/// The usual values of the run under way itself, which join those of earlier runs: the medians so
/// far, of samples thinned out so that a long run costs no more than a short one.
class OwnUsual {
public:
    /// Samples of a channel of the run, later ones than before. Those of other channels than the
    /// device's are passed over.
    void add(const std::string& channel, const Samples& samples, double from_s);
    /// Joins what is known to `usual`; nothing in the first half minute, which may be unlike the
    /// rest.
    void join(const Run& run, double now_s, rules::UsualValues& usual) const;

private:
    struct Thinned {
        std::vector<double> time_s, value;
        double apart_s = 0.5; ///< between those kept
    };
    std::map<std::string, Thinned> m_channels;
};

} // namespace bothways::core
