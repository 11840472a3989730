// The tables of the program's types, in the native build: some 17 MB that are unpacked to memory before the first line of C# runs, 4,000 pages of which each is touched for the first
// time then. Asked for as large pages (madvise(2), MADV_HUGEPAGE) they are nine, where the system grants that; where it does not, everything is as without.
// What they were unpacked from is read once, so that its pages are given back.
#define _DEFAULT_SOURCE
#include <stdint.h>
#include <sys/mman.h>

enum { SmallPage = 0x1000, LargePage = 0x200000, Signature = 0x00525452 };

// The header the compiler writes: what the program is made of, piece by piece.
struct piece
{
    int32_t id;
    int32_t flags;
    char *from;
    char *to;
};

struct header
{
    uint32_t signature;
    uint16_t major;
    uint16_t minor;
    uint32_t flags;
    uint16_t pieces;
    uint8_t size_of_piece;
    uint8_t kind;
    struct piece piece[];
};

extern struct header __ReadyToRunHeader __attribute__((visibility("hidden")));
extern char __dehydrated_data[] __attribute__((visibility("hidden")));
extern char unpacked_end[] __attribute__((visibility("hidden")));
extern char __bss_start[] __attribute__((visibility("hidden")));

// Stands behind the tables in the section they are unpacked to, and aligns it.
__asm__(".pushsection .hydrated, \"aw\", @nobits\n"
        ".globl unpacked_end\n"
        ".hidden unpacked_end\n"
        "unpacked_end:\n"
        ".balign 0x200000\n"
        ".popsection\n");

static uintptr_t down(uintptr_t address, uintptr_t page)
{
    return address & ~(page - 1);
}

__attribute__((constructor)) static void ask_for_large_pages(void)
{
    // A last large page of which less than half is used stays small ones.
    uintptr_t from = down((uintptr_t)__bss_start + LargePage - 1, LargePage);
    uintptr_t to = down((uintptr_t)unpacked_end + LargePage / 2, LargePage);
    if (from < to)
        madvise((void *)from, to - from, MADV_HUGEPAGE);
}

int __real___managed__Main(int count, char **arguments);

// Stands before the program's own beginning (linker: --wrap), when the tables have been unpacked.
int __wrap___managed__Main(int count, char **arguments)
{
    const struct header *header = &__ReadyToRunHeader;
    if (header->signature == Signature && header->size_of_piece == sizeof(struct piece))
    {
        for (int i = 0; i < header->pieces; i++)
        {
            if (header->piece[i].from == __dehydrated_data)
            {
                uintptr_t from = down((uintptr_t)__dehydrated_data + SmallPage - 1, SmallPage);
                uintptr_t to = down((uintptr_t)header->piece[i].to, SmallPage);
                if (from < to)
                    madvise((void *)from, to - from, MADV_DONTNEED);
            }
        }
    }

    return __real___managed__Main(count, arguments);
}
