/* run ERRORS COMMAND WORD...: runs a command without its output, its errors to a file, and prints what it
   cost: wall seconds, processor seconds (user and system, its children included), largest resident size in
   KiB, exit code. A small C program, because a large parent would lend the child its own size. */
#define _GNU_SOURCE
#include <fcntl.h>
#include <stdio.h>
#include <sys/resource.h>
#include <sys/time.h>
#include <sys/wait.h>
#include <time.h>
#include <unistd.h>

static double seconds(struct timeval time) { return time.tv_sec + time.tv_usec / 1e6; }

static double now(void) {
  struct timespec time;
  clock_gettime(CLOCK_MONOTONIC, &time);
  return time.tv_sec + time.tv_nsec / 1e9;
}

int main(int count, char **words) {
  if (count < 3) return 2;
  double start = now();
  pid_t child = fork();
  if (child < 0) return 2;
  if (child == 0) {
    dup2(open("/dev/null", O_RDWR), 0);
    dup2(open("/dev/null", O_RDWR), 1);
    dup2(open(words[1], O_WRONLY | O_CREAT | O_TRUNC, 0644), 2);
    execvp(words[2], words + 2);
    perror(words[2]);
    _exit(127);
  }
  int status;
  struct rusage usage;
  if (wait4(child, &status, 0, &usage) < 0) return 2;
#ifdef __APPLE__
  long peak = usage.ru_maxrss / 1024;
#else
  long peak = usage.ru_maxrss;
#endif
  printf("%.6f %.6f %ld %d\n", now() - start, seconds(usage.ru_utime) + seconds(usage.ru_stime), peak,
         WIFEXITED(status) ? WEXITSTATUS(status) : 128 + WTERMSIG(status));
  return 0;
}
