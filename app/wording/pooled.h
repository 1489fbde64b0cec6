// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/wording/language.h"
#include "core/answer/pooled.h"

#include <optional>
#include <string>

/// Several studies taken together.
namespace bothways::app::wording {

/// What they say together, or that they are too few.
[[nodiscard]] std::string
pooledSentence(const Language& in, const std::optional<core::Pooled>& pooled, double confidence);
/// The class, as a single study has one; empty where there is nothing to pool.
[[nodiscard]] std::string pooledVerdict(const Language& in,
                                        const std::optional<core::Pooled>& pooled,
                                        double confidence, double margin_pct);
/// What a row of a picture is called: the one effect, if the device did the same in all studies.
[[nodiscard]] std::string commonEffectName(const Language& in);
/// And the mean, if each has an effect of its own.
[[nodiscard]] std::string meanEffectName(const Language& in, const core::Pooled& pooled);
/// How far the studies differ, and what a reader should keep in mind; empty where nothing was
/// pooled.
[[nodiscard]] std::string pooledCaution(const Language& in,
                                        const std::optional<core::Pooled>& pooled);

} // namespace bothways::app::wording
