// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/result.h"

#include <QMetaType>

/// Signals may carry an Error.
Q_DECLARE_METATYPE(bothways::core::Error)
