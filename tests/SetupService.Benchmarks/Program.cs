Console.WriteLine("No benchmark yet.");
