// Copyright (C) 2026 The Bothways developers
// SPDX-License-Identifier: GPL-3.0-or-later
#include "storage/bytes/file_bytes.h"
#include "storage/spreadsheet/workbook.h"
#include "tests/storage/study/study_builders.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <zip.h>

#include <filesystem>
#include <functional>

// Workbooks of which a part is broken, missing or of another kind.

using namespace bothways;
using storage::CellKind;
using testing::HasSubstr;

namespace {

using Parts = std::vector<std::pair<std::string, std::string>>; ///< names and what they hold

std::string wholeWorkbook(const std::filesystem::path& file)
{
    auto bytes = storage::readWholeFile(file, std::size_t{1} << 20, "a workbook"_t);
    EXPECT_TRUE(bytes) << file;
    return bytes ? std::move(bytes).take() : std::string();
}

/// An archive with these parts in place of, or beside, those that it has. What holds nothing is
/// taken out.
std::string workbookWith(const std::string& original, const Parts& parts)
{
    const tests::TemporaryFolder folder;
    const std::filesystem::path file = folder / "workbook";
    if (!original.empty())
        std::filesystem::copy(std::filesystem::path(BOTHWAYS_SOURCE_DIR) /
                                  "tests/storage/spreadsheet/files" / original,
                              file);
    zip_t* archive = zip_open(file.c_str(), ZIP_CREATE, nullptr);
    for (const auto& [name, text] : parts) {
        if (text.empty())
            zip_delete(archive,
                       static_cast<zip_uint64_t>(zip_name_locate(archive, name.c_str(), 0)));
        else
            zip_file_add(archive, name.c_str(),
                         zip_source_buffer(archive, text.data(), text.size(), 0), ZIP_FL_OVERWRITE);
    }
    EXPECT_EQ(zip_close(archive), 0);
    return wholeWorkbook(file);
}

std::string refusedWorkbook(const std::string& bytes)
{
    const auto tables = storage::readWorkbook(bytes, "book");
    return tables ? "taken" : core::describe(tables.error());
}

const std::string kXlsx = "shared_strings.xlsx", kOds = "repeated_and_times.ods";

/// An .ods whose one sheet has this one line of cells.
std::vector<storage::Cell> odsCells(const std::string& cells)
{
    const auto tables = storage::readWorkbook(
        workbookWith(kOds, {{"content.xml",
                             "<office:document-content xmlns:office=\"o\" xmlns:table=\"t\" "
                             "xmlns:text=\"x\"><office:spreadsheet><table:table table:name=\"a\">"
                             "<table:table-row>" +
                                 cells +
                                 "</table:table-row></table:table></office:spreadsheet>"
                                 "</office:document-content>"}}),
        "book");
    EXPECT_TRUE(tables && tables.value().size() == 1 && tables.value()[0].rows.size() == 1);
    return tables && !tables.value().empty() && !tables.value()[0].rows.empty()
               ? tables.value()[0].rows[0].cells
               : std::vector<storage::Cell>();
}

} // namespace

TEST(BrokenWorkbooks, SayWhichPartIsDamagedAndOnWhichLine)
{
    const std::string torn = "<?xml version=\"1.0\"?>\n<a>\n<b";
    for (const char* part : {"_rels/.rels", "xl/workbook.xml", "xl/_rels/workbook.xml.rels",
                             "xl/sharedStrings.xml", "xl/styles.xml", "xl/worksheets/sheet1.xml"})
        EXPECT_THAT(refusedWorkbook(workbookWith(kXlsx, {{part, torn}})),
                    HasSubstr(std::string("is damaged: its part '") + part +
                              "' has the file ends within a tag or a section on line 3"));
    EXPECT_THAT(refusedWorkbook(workbookWith(kOds, {{"content.xml", torn}})),
                HasSubstr("is damaged: its part 'content.xml' has"));
}

TEST(BrokenWorkbooks, SayWhichPartIsMissing)
{
    EXPECT_THAT(refusedWorkbook(workbookWith(kXlsx, {{"xl/worksheets/sheet1.xml", ""}})),
                HasSubstr("is no workbook that we know: its part 'xl/worksheets/sheet1.xml' is "
                          "missing"));
}

TEST(BrokenWorkbooks, WhosePackedBytesAreDamagedAreRefused)
{
    std::string bytes = wholeWorkbook(std::filesystem::path(BOTHWAYS_SOURCE_DIR) /
                                      "tests/storage/spreadsheet/files" / kXlsx);
    const std::string part = "xl/sharedStrings.xml";
    const std::size_t packed = bytes.find(part) + part.size();
    ASSERT_LT(packed + 100, bytes.size());
    bytes[packed + 80] = static_cast<char>(bytes[packed + 80] ^ 0x55);
    EXPECT_THAT(refusedWorkbook(bytes),
                HasSubstr("is damaged: its part 'xl/sharedStrings.xml' cannot be unpacked"));
}

TEST(BrokenWorkbooks, OfAnotherKindAreNamed)
{
    const char* const kNone = "is an archive but no workbook; expected .xlsx, .ods, or text";
    EXPECT_THAT(refusedWorkbook(workbookWith("", {{"readme.txt", "text"}})), HasSubstr(kNone));
    EXPECT_THAT(refusedWorkbook(workbookWith("", {{"xl/workbook.bin", "\x83"}})),
                HasSubstr("is a binary workbook (.xlsb)"));
    EXPECT_THAT(refusedWorkbook(workbookWith(kOds, {{"content.xml", "<a><text/></a>"}})),
                HasSubstr(kNone));
    EXPECT_THAT(refusedWorkbook(workbookWith(kXlsx, {{"_rels/.rels", "<Relationships/>"}})),
                HasSubstr(kNone));
}

TEST(BrokenWorkbooks, FilesOfOtherProgramsAreNamed)
{
    using namespace std::string_view_literals;
    const auto why = [](std::string_view bytes) {
        const auto said = storage::whyNoSpreadsheet(bytes);
        return said ? said->english() : "";
    };
    EXPECT_THAT(why("\xD0\xCF\x11\xE0\xA1\xB1\x1A\xE1 and so on"sv),
                HasSubstr("an old office program (.xls)"));
    EXPECT_THAT(why("%PDF-1.7"sv), HasSubstr("is a PDF"));
    for (const std::string_view picture : {"GIF89a"sv, "RIFF1234WEBPVP8"sv, "BM\x9a\0\0\0"sv,
                                           "\0\0\0\x18"
                                           "ftypheic\0"sv})
        EXPECT_THAT(why(picture), HasSubstr("is a picture"));
    EXPECT_EQ(why("BMW,out,05:40"sv), "");
    EXPECT_EQ(why("RIFF,out,05:40"sv), "");
}

TEST(OdsCells, AreWhatTheySayOrWhatStandsInThem)
{
    const auto cells = odsCells(
        "<table:table-cell office:value-type=\"boolean\" office:boolean-value=\"true\"/>"
        "<table:table-cell office:value-type=\"string\"><text:p>a<text:tab/>b<text:line-break/>c"
        "<text:note>not this</text:note></text:p><text:p>d<text:s text:c=\"2\"/>e</text:p>"
        "</table:table-cell>"
        "<table:table-cell table:formula=\"of:=1/0\" office:value-type=\"string\">"
        "<text:p>#DIV/0!</text:p></table:table-cell>"
        "<table:table-cell><text:p>of no kind</text:p></table:table-cell>");
    ASSERT_EQ(cells.size(), 4U);
    EXPECT_EQ(cells[0].kind, CellKind::boolean);
    EXPECT_EQ(cells[0].text, "true");
    EXPECT_EQ(cells[1].text, "a\tb\nc\nd  e");
    EXPECT_EQ(cells[2].kind, CellKind::error);
    EXPECT_EQ(cells[3].kind, CellKind::text);
    EXPECT_EQ(cells[3].text, "of no kind");
}

TEST(XlsxCells, AreWhatTheirTypeSays)
{
    const auto tables = storage::readWorkbook(
        workbookWith(kXlsx,
                     {{"xl/sharedStrings.xml",
                       "<sst><si><r><t>rich </t></r><r><t>text</t></r><rPh><t>sound</t></rPh></si>"
                       "</sst>"},
                      {"xl/worksheets/sheet1.xml",
                       "<worksheet><sheetData><row r=\"1\"><c t=\"s\"><v>0</v></c><c t=\"s\"><v>7"
                       "</v></c><c t=\"b\"><v>1</v></c><c t=\"e\"><v>#N/A</v></c><c><f>A1</f></c>"
                       "</row></sheetData></worksheet>"}}),
        "book");
    ASSERT_TRUE(tables) << core::describe(tables.error());
    const auto& cells = tables.value().at(0).rows.at(0).cells;
    ASSERT_EQ(cells.size(), 5U);
    EXPECT_EQ(cells[0].text, "rich text");
    EXPECT_EQ(cells[1].kind, CellKind::error) << "a text that is not there";
    EXPECT_EQ(cells[1].text, "#REF!");
    EXPECT_EQ(cells[2].text, "true");
    EXPECT_EQ(cells[3].kind, CellKind::error);
    EXPECT_EQ(cells[4].kind, CellKind::noValue);
}
