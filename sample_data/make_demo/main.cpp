// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample_data/make_demo/generator_day.h"
#include "sample_data/make_demo/generator_traces.h"
#include "sample_data/make_demo/other_sheets.h"

#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>
#include <system_error>
#include <vector>

namespace {

bool write(const std::filesystem::path& file, const std::string& text)
{
    std::error_code ignored; // the stream says what went wrong
    std::filesystem::create_directories(file.parent_path(), ignored);
    std::ofstream stream(file, std::ios::binary);
    stream << text;
    stream.flush();
    if (!stream)
        std::cerr << "make_demo: " << file.string() << " cannot be written\n";
    return static_cast<bool>(stream);
}

} // namespace

/// make_demo FOLDER: writes the demo's run sheets and recordings there.
int main(int argc, char** argv)
{
    if (argc != 2) {
        std::cerr << "Usage: make_demo FOLDER\n";
        return 2;
    }
    using namespace bothways::demo;
    const std::filesystem::path folder = argv[1];
    const std::vector<DayRun> day = generatorDay();
    bool written = write(folder / "levee_generator.csv", generatorSheet(day)) &&
                   write(folder / "roof_box.csv", roofBoxSheet()) &&
                   write(folder / "tyre_pressure.csv", tyrePressureSheet());
    for (const TraceFile& trace : generatorTraces(day))
        written = written && write(folder / trace.name, trace.text);
    return written ? 0 : 4;
}
