// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/answer/result_set.h"

#include <QMetaType>

#include <memory>

/// The answer, as a value that signals carry.
Q_DECLARE_METATYPE(std::shared_ptr<const bothways::app::ResultSet>)
