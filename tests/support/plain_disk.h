// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

/// A file system that knows no more than a memory stick's: no files without a name, no second
/// names, no renaming on conditions. The calls of the C library are answered for it in this
/// program, as such a disk has them answered.
namespace bothways::tests {

/// While it lives, every disk is one. One at a time.
class PlainDisk {
public:
    PlainDisk();
    ~PlainDisk();
    PlainDisk(const PlainDisk&) = delete;
    PlainDisk& operator=(const PlainDisk&) = delete;
};

} // namespace bothways::tests
