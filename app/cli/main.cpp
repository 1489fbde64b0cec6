// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/cli/process.h"

int main(int argc, char** argv)
{
    return bothways::cli::runProcess(argc, argv);
}
